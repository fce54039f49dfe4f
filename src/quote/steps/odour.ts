import { cabinFactor } from '../../intake/facts/cabin-factor'
import { cabinWork } from '../../intake/facts/cabin-scope'
import { has } from '../../intake/facts/has'
import { cabinMarks } from '../../intake/questions/cabin-marks'
import { patina } from '../../intake/questions/patina'
import { sensitivePeople } from '../../intake/questions/sensitive-people'
import type { Reader } from '../../intake/reader'
import type { Context } from '../context'
import type { StepRule } from '../rules'
import { budgetIsTight } from './budget-hours'
import { dryFirst } from './cabin'
import { need, sourceOf } from './need'
import { step } from './step'

/** A smell is worked on where it has a source inside, money for it, and nobody wants it kept. */
const smells = (r: Reader, c: Context): boolean =>
  cabinWork(r) &&
  has(r, cabinMarks, 'smoke', 'milk', 'urine', 'vomit') &&
  !budgetIsTight(r, c) &&
  !has(r, patina, 'smell')

/** Ozone only where nobody who rides along may be harmed by what is left of it. */
const ozoned = (r: Reader, c: Context): boolean => smells(r, c) && r.value(sensitivePeople) !== true

/** Odour work is always last: everything in the cabin is dry and clean before it. */
const cleaned: readonly string[] = [
  ...dryFirst,
  'cabin-vacuum',
  'pet-hair',
  'mats',
  'headliner',
  'plastics',
  'seats-textile',
  'leather-clean',
  'suede-brush',
  'leather-condition',
  'belts',
  'carpet-extraction',
  'carpet-refit',
]

export const odour: readonly StepRule[] = [
  step({
    id: 'odour-source',
    track: 'cabin',
    order: 380,
    after: cleaned,
    source: sourceOf('odour-source'),
    cautions: () => ['product-label'],
    need: (r, c) => (smells(r, c) ? need('odour-source', 1, 'car', cabinFactor(r)) : null),
  }),
  step({
    id: 'odour-filter',
    track: 'cabin',
    order: 384,
    after: ['cabin-vacuum', 'odour-source'],
    materials: ['cabin-filter'],
    source: sourceOf('odour-filter'),
    need: (r, c) => (smells(r, c) ? need('odour-filter', 1, 'piece') : null),
  }),
  step({
    id: 'ozone',
    track: 'cabin',
    order: 540,
    after: [...cleaned, 'odour-source', 'odour-filter', 'cabin-wipe', 'glass-inside'],
    pausable: false,
    kit: ['ozone'],
    source: sourceOf('ozone'),
    cautions: () => ['ozone'],
    // Running and airing, with nobody near the car.
    lag: (r, c) =>
      ozoned(r, c) ? { minutes: 240, kind: 'elapsed', blocks: 'bay', why: 'dwell' } : null,
    need: (r, c) => (ozoned(r, c) ? need('ozone', 1, 'visit') : null),
  }),
  step({
    id: 'odour-recheck',
    track: 'cabin',
    order: 574,
    after: ['ozone', 'odour-source', 'glass-inside'],
    bay: false,
    source: sourceOf('odour-recheck'),
    need: (r, c) => (smells(r, c) ? need('odour-recheck', 1, 'visit') : null),
  }),
]
