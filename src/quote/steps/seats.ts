import { cabinClass } from '../../intake/facts/cabin-class'
import { cabinFactor } from '../../intake/facts/cabin-factor'
import { cabinWork } from '../../intake/facts/cabin-scope'
import { has } from '../../intake/facts/has'
import { colourMayMove, leatherSeats } from '../../intake/facts/leather'
import { seats } from '../../intake/facts/seats'
import { cabinMarks } from '../../intake/questions/cabin-marks'
import { leather } from '../../intake/questions/leather'
import type { Reader } from '../../intake/reader'
import type { Context } from '../context'
import type { StepRule } from '../rules'
import { workedClass } from './budget-hours'
import { dryFirst } from './cabin'
import { byTimeWhen, need, sourceOf, withRow } from './need'
import { step } from './step'

/** Wet cleaning is part of a family or neglected cabin, unless the budget stops at a dry clean. */
const wetClean = (r: Reader, c: Context): boolean => {
  const state = workedClass(r, c)
  return state === 'family' || state === 'neglected'
}
const worse = (r: Reader): number => (cabinClass(r) === 'neglected' ? 1.4 : 1)
const neglected = (r: Reader): boolean => cabinClass(r) === 'neglected'

/** Textile dries 4 to 8 hours after a light clean, carpet 12 to 24 (common practice, no source). */
const dries = { seat: 360, carpet: 1080 } as const

const textile: StepRule['need'] = (r, c) =>
  wetClean(r, c) && !leatherSeats(r) && !has(r, leather, 'suede')
    ? need('seats-textile', seats(r), 'seat', worse(r))
    : null

const carpet: StepRule['need'] = (r, c) => {
  if (!wetClean(r, c)) return null
  const n = need('carpet-extraction', 1, 'car', cabinFactor(r) * worse(r))
  const stained = has(r, cabinMarks, 'stains', 'milk', 'urine', 'vomit')
  if (!n || !stained) return n
  return withRow(n, 'stains', worse(r))
}

const wetAfter: readonly string[] = [...dryFirst, 'cabin-vacuum', 'pet-hair', 'carpet-refit']

export const seatSteps: readonly StepRule[] = [
  step({
    id: 'seats-textile',
    track: 'cabin',
    order: 352,
    after: [...wetAfter, 'headliner'],
    crewMax: 2,
    kit: ['extractor'],
    source: sourceOf('seats-textile'),
    cautions: () => ['restraints', 'electricity-near-water'],
    lag: (r, c) =>
      textile(r, c) ? { minutes: dries.seat, kind: 'elapsed', blocks: 'car', why: 'dry' } : null,
    need: textile,
    byTime: byTimeWhen(neglected, textile),
  }),
  step({
    id: 'leather-clean',
    track: 'cabin',
    order: 356,
    after: [...wetAfter, 'headliner'],
    crewMax: 2,
    source: sourceOf('leather-clean'),
    cautions: (r) => (colourMayMove(r) ? ['leather-test'] : []),
    need: (r) => (cabinWork(r) && leatherSeats(r) ? need('leather-clean', seats(r), 'seat') : null),
  }),
  step({
    id: 'suede-brush',
    track: 'cabin',
    order: 358,
    after: [...wetAfter, 'headliner'],
    source: sourceOf('suede-brush'),
    cautions: () => ['leather-test'],
    need: (r) =>
      cabinWork(r) && has(r, leather, 'suede') && !leatherSeats(r)
        ? need('suede-brush', seats(r), 'seat')
        : null,
  }),
  step({
    id: 'leather-condition',
    track: 'cabin',
    order: 360,
    after: ['leather-clean'],
    source: sourceOf('leather-condition'),
    cautions: (r) => (colourMayMove(r) ? ['leather-test'] : []),
    lag: (r) =>
      cabinWork(r) && leatherSeats(r)
        ? { minutes: 90, kind: 'elapsed', blocks: 'car', why: 'dry' }
        : null,
    // By worn area: the two front seats carry it.
    need: (r) =>
      cabinWork(r) && leatherSeats(r)
        ? need('leather-condition', Math.min(2, seats(r)), 'seat', 1.5)
        : null,
  }),
  step({
    id: 'belts',
    track: 'cabin',
    order: 364,
    after: wetAfter,
    duties: ['belts'],
    source: sourceOf('belts'),
    cautions: () => ['restraints'],
    need: (r, c) =>
      wetClean(r, c) && (neglected(r) || has(r, cabinMarks, 'smoke', 'vomit'))
        ? need('belts', 1, 'car')
        : null,
  }),
  step({
    id: 'carpet-extraction',
    track: 'cabin',
    order: 368,
    // Seats first by order alone: the carpet need not wait until they are dry.
    after: [...wetAfter, 'plastics', 'leather-clean'],
    kit: ['extractor'],
    source: sourceOf('carpet-extraction'),
    cautions: (r) =>
      has(r, cabinMarks, 'urine', 'vomit')
        ? ['electricity-near-water', 'body-fluids']
        : ['electricity-near-water'],
    lag: (r, c) =>
      carpet(r, c) ? { minutes: dries.carpet, kind: 'elapsed', blocks: 'car', why: 'dry' } : null,
    need: carpet,
    byTime: byTimeWhen(neglected, carpet),
  }),
]
