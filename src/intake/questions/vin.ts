import { history, wantsPaint } from '../conditions'
import { type Question, question } from '../question'
import { byGiven } from '../reply'
import { year } from './year'

export const vin: Question<string> = question({
  id: 'vin',
  topic: 'car',
  stage: 'narrow',
  kind: 'vin',
  optional: true,
  asked: (r) =>
    r.unsettled(year) ||
    (wantsPaint(r) && history(r) && r.as(year, (built) => built >= 1981) === true),
  reply: (r) => byGiven(r, vin),
})
