import { type Question, question } from '../question'
import { byOption } from '../reply'
import { begunYear } from './begun-year'
import { filmAge } from './film-age'
import { year } from './year'

export const YEAR_CHECK_OPTIONS = ['car-year-wrong', 'film-age-wrong', 'both-right'] as const
export type YearCheck = (typeof YEAR_CHECK_OPTIONS)[number]

export const yearCheck: Question<YearCheck> = question({
  id: 'year-check',
  topic: 'film',
  stage: 'first',
  kind: 'choice',
  options: YEAR_CHECK_OPTIONS,
  unsureAllowed: true,
  check: true,
  asked: (r) => (r.value(filmAge) ?? 0) > (r.value(begunYear) ?? 2026) + 1 - (r.value(year) ?? 0),
  reply: (r) => byOption(r, yearCheck),
})
