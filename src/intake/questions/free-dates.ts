import { history } from '../conditions'
import { type Question, question } from '../question'
import { byGiven } from '../reply'

export const freeDates: Question<string> = question({
  id: 'free-dates',
  topic: 'send',
  stage: 'narrow',
  kind: 'text',
  optional: true,
  asked: (r) => history(r),
  reply: (r) => byGiven(r, freeDates),
})
