import { type Question, question } from '../question'
import { byGiven } from '../reply'
import { readingsBefore } from './readings-before'

export const readingsText: Question<string> = question({
  id: 'readings-text',
  topic: 'paint',
  stage: 'narrow',
  kind: 'text',
  optional: true,
  asked: (r) => r.value(readingsBefore) === true,
  reply: (r) => byGiven(r, readingsText),
})
