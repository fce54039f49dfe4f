import { history, matte, wantsPaint } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const POLISHED_BEFORE_OPTIONS = ['never', 'once', 'several', 'often-or-dealer'] as const
export type PolishedBefore = (typeof POLISHED_BEFORE_OPTIONS)[number]

export const polishedBefore: Question<PolishedBefore> = question({
  id: 'polished-before',
  topic: 'paint',
  stage: 'narrow',
  kind: 'choice',
  options: POLISHED_BEFORE_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['never', 0.3],
    ['once', 0.35],
    ['several', 0.2],
    ['often-or-dealer', 0.15],
  ],
  likelySource: 'own estimate',
  carSd: 0.03,
  asked: (r) => wantsPaint(r) && !matte(r) && history(r),
  reply: (r) => byOption(r, polishedBefore),
})
