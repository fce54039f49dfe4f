import { history, wantsPaint } from '../conditions'
import { type Question, question } from '../question'
import { byYes } from '../reply'

export const readingsBefore: Question<boolean> = question({
  id: 'readings-before',
  topic: 'paint',
  stage: 'narrow',
  kind: 'yesNo',
  asked: (r) => wantsPaint(r) && history(r),
  reply: (r) => byYes(r, readingsBefore),
})
