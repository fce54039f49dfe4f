import { history } from '../conditions'
import { question } from '../question'

export const freeDates = question<string>({
  id: 'free-dates',
  topic: 'send',
  stage: 'narrow',
  kind: 'text',
  optional: true,
  asked: (r) => history(r),
})
