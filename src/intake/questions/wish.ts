import { wantsPaint } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const WISH_OPTIONS = ['preserve', 'improve', 'show'] as const
export type Wish = (typeof WISH_OPTIONS)[number]

export const wish: Question<Wish> = question({
  id: 'wish',
  topic: 'wish',
  stage: 'first',
  kind: 'choice',
  options: WISH_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['preserve', 0.25],
    ['improve', 0.6],
    ['show', 0.15],
  ],
  likelySource: 'own estimate',
  asked: (r) => wantsPaint(r),
  reply: (r) => byOption(r, wish),
})
