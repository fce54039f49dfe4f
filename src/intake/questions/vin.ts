import { history, wantsPaint } from '../conditions'
import { question } from '../question'
import { year } from './year'

export const vin = question<string>({
  id: 'vin',
  topic: 'car',
  stage: 'narrow',
  kind: 'vin',
  optional: true,
  asked: (r) => r.unsettled(year) || (wantsPaint(r) && history(r) && (r.value(year) ?? 0) >= 1981),
})
