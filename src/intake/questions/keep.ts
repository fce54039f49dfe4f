import { question } from '../question'
import { patina } from './patina'

export const keep = question<string>({
  id: 'keep',
  topic: 'wish',
  stage: 'narrow',
  kind: 'text',
  optional: true,
  asked: (r) => (r.value(patina)?.length ?? 0) > 0,
})
