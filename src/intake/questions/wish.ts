import { wantsPaint } from '../conditions'
import { question } from '../question'

export const WISH_OPTIONS = ['preserve', 'improve', 'show'] as const
export type Wish = (typeof WISH_OPTIONS)[number]

export const wish = question<Wish>({
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
})
