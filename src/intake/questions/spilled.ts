import { question } from '../question'
import { cabinMarks } from './cabin-marks'

export const spilled = question<string>({
  id: 'spilled',
  topic: 'cabin',
  stage: 'narrow',
  kind: 'text',
  optional: true,
  asked: (r) => r.value(cabinMarks)?.some((m) => m === 'stains' || m === 'milk') === true,
})
