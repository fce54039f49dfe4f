import { history } from '../conditions'
import { question } from '../question'

export const budget = question<number>({
  id: 'budget',
  topic: 'wish',
  stage: 'narrow',
  kind: 'money',
  optional: true,
  asked: (r) => history(r),
})
