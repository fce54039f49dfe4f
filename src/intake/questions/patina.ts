import { history, olderThan, service } from '../conditions'
import { is } from '../facts/is'
import { type Question, question } from '../question'
import { byWeight } from '../reply'
import { wish } from './wish'

export const PATINA_OPTIONS = ['marks', 'patina', 'smell', 'signatures'] as const
export type Patina = (typeof PATINA_OPTIONS)[number]

export const patina: Question<readonly Patina[]> = question({
  id: 'patina',
  topic: 'wish',
  stage: 'narrow',
  kind: 'multi',
  options: PATINA_OPTIONS,
  asked: (r) =>
    olderThan(r, 1995) ||
    (history(r) && (is(r, wish, 'preserve') || (service(r, 'cabin') && olderThan(r, 2005)))),
  reply: (r) => byWeight(r, patina, ['signatures', 'smell', 'patina', 'marks']),
})
