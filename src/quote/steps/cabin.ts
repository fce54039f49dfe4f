import { airAllowed } from '../../intake/facts/air-allowed'
import { type CabinClass, cabinClass } from '../../intake/facts/cabin-class'
import { cabinFactor } from '../../intake/facts/cabin-factor'
import { cabinWork } from '../../intake/facts/cabin-scope'
import { has } from '../../intake/facts/has'
import { is } from '../../intake/facts/is'
import { wants } from '../../intake/facts/wants'
import { cabinMarks } from '../../intake/questions/cabin-marks'
import { growth } from '../../intake/questions/growth'
import { headliner } from '../../intake/questions/headliner'
import type { Reader } from '../../intake/reader'
import type { StepRule } from '../rules'
import { budgetIsTight, workedClass } from './budget-hours'
import type { MinutesKey } from './minutes'
import { byTimeWhen, need, sourceOf, withRow } from './need'
import { step } from './step'

/** Cabin work against a tidy cabin (own estimate). */
export const classFactor: Readonly<Record<CabinClass, number>> = {
  tidy: 1,
  family: 1.5,
  neglected: 2.1,
}

/** What must be over before anything in the cabin is cleaned. */
export const dryFirst: readonly string[] = [
  'check-in',
  'look-over',
  'rodent-wipe',
  'wiring-look',
  'leak-proof',
  'dry-reading',
  'mould-again',
]

const neglected = (r: Reader): boolean => cabinClass(r) === 'neglected'

const byClass =
  (key: MinutesKey): StepRule['need'] =>
  (r, c) => {
    const state = workedClass(r, c)
    return state ? need(key, 1, 'car', classFactor[state] * cabinFactor(r)) : null
  }

/** What makes vacuuming longer than the cabin's class alone, by mark. */
const vacuumMarks = ['sand', 'rubbish', 'salt'] as const

const vacuum: StepRule['need'] = (r, c) => {
  const n = byClass('cabin-vacuum')(r, c)
  if (!n) return null
  const found = vacuumMarks.filter((m) => has(r, cabinMarks, m))
  return found.reduce((sum, mark) => withRow(sum, mark, cabinFactor(r)), n)
}

export const cabin: readonly StepRule[] = [
  step({
    id: 'cabin-empty',
    track: 'cabin',
    order: 130,
    after: ['check-in', 'look-over', 'rodent-wipe'],
    source: sourceOf('cabin-empty'),
    cautions: () => ['restraints'],
    need: byClass('cabin-empty'),
  }),
  step({
    id: 'cabin-air',
    track: 'cabin',
    order: 330,
    after: [...dryFirst, 'cabin-empty'],
    kit: ['air-compressor'],
    source: sourceOf('cabin-air'),
    cautions: () => ['compressed-air'],
    need: (r) => (cabinWork(r) && airAllowed(r) ? need('cabin-air', 1, 'car') : null),
  }),
  step({
    id: 'pet-hair',
    track: 'cabin',
    order: 334,
    after: [...dryFirst, 'cabin-empty', 'cabin-air'],
    source: sourceOf('pet-hair'),
    // Half the time takes nine hairs of ten; a fixed time stops there.
    need: (r, c) =>
      cabinWork(r) && has(r, cabinMarks, 'pet-hair')
        ? need('pet-hair', 1, 'car', cabinFactor(r) * (budgetIsTight(r, c) ? 0.5 : 1))
        : null,
  }),
  step({
    id: 'cabin-vacuum',
    track: 'cabin',
    order: 338,
    after: [...dryFirst, 'cabin-empty', 'cabin-air', 'pet-hair'],
    crewMax: 2,
    source: sourceOf('cabin-vacuum'),
    need: vacuum,
    byTime: byTimeWhen(neglected, vacuum),
  }),
  step({
    id: 'mats',
    track: 'cabin',
    order: 340,
    after: [...dryFirst, 'cabin-empty'],
    bay: false,
    source: sourceOf('mats'),
    cautions: () => ['scald'],
    need: byClass('mats'),
  }),
  step({
    id: 'headliner',
    track: 'cabin',
    order: 342,
    after: [...dryFirst, 'cabin-vacuum'],
    source: sourceOf('headliner'),
    cautions: () => ['headliner'],
    need: (r, c) =>
      cabinWork(r) &&
      has(r, cabinMarks, 'smoke') &&
      !budgetIsTight(r, c) &&
      !has(r, growth, 'mould-headliner') &&
      !is(r, headliner, 'loose')
        ? need('headliner', 1, 'car', cabinFactor(r))
        : null,
  }),
  step({
    id: 'plastics',
    track: 'cabin',
    order: 346,
    after: [...dryFirst, 'cabin-vacuum', 'headliner'],
    crewMax: 2,
    source: sourceOf('plastics'),
    cautions: () => ['restraints', 'no-dressing'],
    need: byClass('plastics'),
    byTime: byTimeWhen(neglected, byClass('plastics')),
  }),
  step({
    id: 'cabin-wipe',
    track: 'cabin',
    order: 530,
    after: [...dryFirst, 'cabin-vacuum', 'plastics', 'leather-clean', 'suede-brush'],
    source: sourceOf('cabin-wipe'),
    need: (r) => (cabinWork(r) ? need('cabin-wipe', 1, 'car') : null),
  }),
  step({
    id: 'glass-inside',
    track: 'cabin',
    order: 534,
    after: ['cabin-vacuum', 'plastics', 'headliner', 'cabin-wipe'],
    source: sourceOf('glass-inside'),
    cautions: () => ['heated-glass'],
    need: (r) =>
      cabinWork(r) || wants(r, 'glass') ? need('glass-inside', 1, 'car', cabinFactor(r)) : null,
  }),
]
