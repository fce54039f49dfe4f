import { question } from '../question'
import { readingsBefore } from './readings-before'

export const readingsText = question<string>({
  id: 'readings-text',
  topic: 'paint',
  stage: 'narrow',
  kind: 'text',
  optional: true,
  asked: (r) => r.value(readingsBefore) === true,
})
