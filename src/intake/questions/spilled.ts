import { has } from '../facts/has'
import { type Question, question } from '../question'
import { byGiven } from '../reply'
import { cabinMarks } from './cabin-marks'

export const spilled: Question<string> = question({
  id: 'spilled',
  topic: 'cabin',
  stage: 'narrow',
  kind: 'text',
  optional: true,
  asked: (r) => has(r, cabinMarks, 'stains', 'milk'),
  reply: (r) => byGiven(r, spilled),
})
