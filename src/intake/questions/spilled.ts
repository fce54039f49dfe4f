import { type Question, question } from '../question'
import { byGiven } from '../reply'
import { cabinMarks } from './cabin-marks'

export const spilled: Question<string> = question({
  id: 'spilled',
  topic: 'cabin',
  stage: 'narrow',
  kind: 'text',
  optional: true,
  asked: (r) => r.value(cabinMarks)?.some((m) => m === 'stains' || m === 'milk') === true,
  reply: (r) => byGiven(r, spilled),
})
