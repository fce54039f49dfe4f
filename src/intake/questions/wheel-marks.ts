import { history, service } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const WHEEL_MARKS_OPTIONS = ['stickers', 'kerbed', 'caliper-letters'] as const
export type WheelMarks = (typeof WHEEL_MARKS_OPTIONS)[number]

export const wheelMarks: Question<readonly WheelMarks[]> = question({
  id: 'wheel-marks',
  topic: 'wheels',
  stage: 'narrow',
  kind: 'multi',
  options: WHEEL_MARKS_OPTIONS,
  unsureAllowed: true,
  likely: [
    [[], 0.5],
    [['kerbed'], 0.4],
    [['stickers'], 0.1],
  ],
  likelySource: 'own estimate',
  asked: (r) => service(r, 'wheels-off') && history(r),
  reply: (r) => byWeight(r, wheelMarks, WHEEL_MARKS_OPTIONS),
})
