import { history } from '../conditions'
import { type Question, question } from '../question'
import { byGiven } from '../reply'

export const bestThing: Question<string> = question({
  id: 'best-thing',
  topic: 'wish',
  stage: 'narrow',
  kind: 'text',
  optional: true,
  asked: (r) => history(r),
  reply: (r) => byGiven(r, bestThing),
})
