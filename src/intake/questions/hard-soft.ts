import { history, matte, wantsPaint } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const HARD_SOFT_OPTIONS = ['marks-easily', 'normal', 'very-hard'] as const
export type HardSoft = (typeof HARD_SOFT_OPTIONS)[number]

export const hardSoft: Question<HardSoft> = question({
  id: 'hard-soft',
  topic: 'paint',
  stage: 'narrow',
  kind: 'choice',
  options: HARD_SOFT_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['marks-easily', 0.25],
    ['normal', 0.6],
    ['very-hard', 0.15],
  ],
  likelySource: 'own estimate',
  carSd: 0.03,
  asked: (r) => wantsPaint(r) && !matte(r) && history(r),
  reply: (r) => byOption(r, hardSoft),
})
