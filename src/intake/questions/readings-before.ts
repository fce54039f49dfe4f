import { history, wantsPaint } from '../conditions'
import { question } from '../question'

export const readingsBefore = question<boolean>({
  id: 'readings-before',
  topic: 'paint',
  stage: 'narrow',
  kind: 'yesNo',
  asked: (r) => wantsPaint(r) && history(r),
})
