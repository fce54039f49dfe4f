import type { Answer, Answers } from '../../src/intake/answers'
import type { Question } from '../../src/intake/question'
import { script } from '../../src/intake/script'
import type { EstimateInput } from '../../src/quote/estimate'
import { walk } from '../../tests/corpus/walk'
import { type Case, type Told, toldOf } from './case'
import { cabinWork, growth, mapCabin, wet } from './map-cabin'
import { mapCar, nowYearOf } from './map-car'
import { mapFilm, stickers } from './map-film'
import { freshPaint, mapPaint, paintWork, peeling } from './map-paint'

const dangersOf = (t: Told): readonly string[] => [
  ...(freshPaint(t) ? ['fresh-paint'] : []),
  ...(t.film !== null ? ['film'] : []),
  ...(peeling(t) ? ['peeling'] : []),
  ...(t.says(/\bmatte\b|satin paint/) ? ['matte'] : []),
  ...(wet(t) ? ['wet'] : []),
  ...(growth(t) ? ['growth'] : []),
  ...(t.says(/no start|does not start|non-runner|battery flat|flat battery|\btow\b/)
    ? ['not-driving']
    : []),
]

const servicesOf = (t: Told): readonly string[] => {
  const found = [
    // Film alone is what is asked about, unless more than its removal is said of the paint.
    ...((t.film === null && paintWork(t)) || t.says(/swirl|keyed|polish|correct/) ? ['paint'] : []),
    ...(t.says(/for (a )?coating|to be coated|ceramic|\bwaxed?\b|protection/) ? ['protect'] : []),
    ...(cabinWork(t) ? ['cabin'] : []),
    ...(t.says(/wheels? (off|out|refurb)|calipers/) ? ['wheels-off'] : []),
    ...(t.says(/engine.{0,20}wash|washing the engine|engine bay/) ? ['engine-bay'] : []),
    ...(t.film !== null || stickers(t) ? ['stickers'] : []),
  ]
  return found.length > 0 ? found : ['paint']
}

/** What the owner would answer, by question; what is not told is absent. */
export const toldAnswers = (c: Case, nowYear: number, today: string): Record<string, unknown> => {
  const t = toldOf(c)
  return {
    ...mapCar(c, nowYear, today),
    ...mapPaint(t),
    ...mapFilm(t),
    ...mapCabin(t),
    dangers: dangersOf(t),
    services: servicesOf(t),
    'begun-year': nowYear,
    'readings-before': t.fact('readings_um') !== '',
    payer: 'me',
    claim: false,
    'drive-consent': true,
    'year-check': 'both-right',
    'system-check': 'maybe-metal-dust',
    patina: [],
    belongings: [],
    contact: { name: 'Owner', email: 'owner@example.test' },
  }
}

/** Not told: not known where the question allows it, left out where it may be. */
const untold = (q: Question<unknown>): Answer =>
  q.unsureAllowed ? { unsure: true } : { value: q.optional ? null : (q.options?.[0] ?? null) }

const readingsOf = (c: Case): EstimateInput['readings'] => {
  const values = c.facts.readings_um
  return Array.isArray(values) && values.every((v) => typeof v === 'number')
    ? [{ panel: 'bonnet', kind: 'panel', values, probe: 'dual' }]
    : []
}

/** A told car as answers and readings, by general keyword rules: nothing looks at which car it is. */
export const mapCase = (
  c: Case,
): {
  readonly answers: Answers
  readonly readings: EstimateInput['readings']
  readonly today: string
} => {
  const nowYear = nowYearOf(c, 2026)
  const today = `${nowYear}-06-01`
  const given = toldAnswers(c, nowYear, today)
  const answers = walk(script, (q) => {
    const value = given[q.id]
    return value === undefined ? untold(q) : { value }
  })
  return {
    answers: { ...answers, 'begun-year': { value: nowYear } },
    readings: readingsOf(c),
    today,
  }
}
