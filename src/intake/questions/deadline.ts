import { question } from '../question'

export const deadline = question<string>({
  id: 'deadline',
  topic: 'wish',
  stage: 'first',
  kind: 'date',
  optional: true,
})
