import { danger, hasMould } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const DAMP_CHECK_OPTIONS = ['damp-now', 'was-damp', 'never-damp'] as const
export type DampCheck = (typeof DAMP_CHECK_OPTIONS)[number]

export const dampCheck: Question<DampCheck> = question({
  id: 'damp-check',
  topic: 'water',
  stage: 'first',
  kind: 'choice',
  options: DAMP_CHECK_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['damp-now', 0.4],
    ['was-damp', 0.4],
    ['never-damp', 0.2],
  ],
  likelySource: 'own estimate',
  check: true,
  asked: (r) => hasMould(r) && !danger(r, 'wet'),
  reply: (r) => byOption(r, dampCheck),
})
