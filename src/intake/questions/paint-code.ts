import { history, wantsPaint } from '../conditions'
import { type Question, question } from '../question'
import { byGiven } from '../reply'
import { defects } from './defects'

export const paintCode: Question<string> = question({
  id: 'paint-code',
  topic: 'paint',
  stage: 'narrow',
  kind: 'text',
  optional: true,
  asked: (r) =>
    wantsPaint(r) &&
    history(r) &&
    r.value(defects)?.some((d) => d === 'chips' || d === 'nail-scratch') === true,
  reply: (r) => byGiven(r, paintCode),
})
