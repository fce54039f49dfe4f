import { spare } from '../conditions'
import { question } from '../question'

export const bestThing = question<string>({
  id: 'best-thing',
  topic: 'wish',
  stage: 'narrow',
  kind: 'text',
  optional: true,
  asked: (r) => spare(r),
})
