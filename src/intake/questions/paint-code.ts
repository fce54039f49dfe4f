import { history, wantsPaint } from '../conditions'
import { has } from '../facts/has'
import { type Question, question } from '../question'
import { byGiven } from '../reply'
import { defects } from './defects'

export const paintCode: Question<string> = question({
  id: 'paint-code',
  topic: 'paint',
  stage: 'narrow',
  kind: 'text',
  optional: true,
  asked: (r) => wantsPaint(r) && history(r) && has(r, defects, 'chips', 'nail-scratch'),
  reply: (r) => byGiven(r, paintCode),
})
