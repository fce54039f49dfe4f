import { history } from '../conditions'
import { type Question, question } from '../question'
import { byGiven } from '../reply'

export const budget: Question<number> = question({
  id: 'budget',
  topic: 'wish',
  stage: 'narrow',
  kind: 'money',
  optional: true,
  asked: (r) => history(r),
  reply: (r) => byGiven(r, budget),
})
