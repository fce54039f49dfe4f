import { history, wantsPaint } from '../conditions'
import { question } from '../question'
import { defects } from './defects'

export const paintCode = question<string>({
  id: 'paint-code',
  topic: 'paint',
  stage: 'narrow',
  kind: 'text',
  optional: true,
  asked: (r) =>
    wantsPaint(r) &&
    history(r) &&
    r.value(defects)?.some((d) => d === 'chips' || d === 'nail-scratch') === true,
})
