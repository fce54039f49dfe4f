import { type Question, question } from '../question'
import { byGiven } from '../reply'
import { patina } from './patina'

export const keep: Question<string> = question({
  id: 'keep',
  topic: 'wish',
  stage: 'narrow',
  kind: 'text',
  optional: true,
  asked: (r) => (r.value(patina)?.length ?? 0) > 0,
  reply: (r) => byGiven(r, keep),
})
