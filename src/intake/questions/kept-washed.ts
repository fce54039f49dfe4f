import { history, wantsPaint } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const KEPT_WASHED_OPTIONS = ['hand', 'brush', 'jet', 'rarely'] as const
export type KeptWashed = (typeof KEPT_WASHED_OPTIONS)[number]

export const keptWashed: Question<KeptWashed> = question({
  id: 'kept-washed',
  topic: 'use',
  stage: 'narrow',
  kind: 'choice',
  options: KEPT_WASHED_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['hand', 0.35],
    ['brush', 0.35],
    ['jet', 0.2],
    ['rarely', 0.1],
  ],
  likelySource: 'own estimate',
  asked: (r) => wantsPaint(r) && history(r),
  reply: (r) => byOption(r, keptWashed),
})
