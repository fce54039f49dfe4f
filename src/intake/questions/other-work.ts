import { crowded, history } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const OTHER_WORK_OPTIONS = ['repaint', 'dents', 'glass', 'upholstery', 'workshop'] as const
export type OtherWork = (typeof OTHER_WORK_OPTIONS)[number]

export const otherWork: Question<readonly OtherWork[]> = question({
  id: 'other-work',
  topic: 'wish',
  stage: 'narrow',
  kind: 'multi',
  options: OTHER_WORK_OPTIONS,
  asked: (r) => history(r) && !crowded(r),
  reply: (r) => byWeight(r, otherWork, OTHER_WORK_OPTIONS),
})
