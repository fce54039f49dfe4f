import { firstStageOnly } from '../../intake/facts/cabin-scope'
import {
  dampClass,
  dirtyWater,
  isWet,
  leakOpen,
  liftsCarpet,
  wetPlaces,
} from '../../intake/facts/damp'
import { is } from '../../intake/facts/is'
import { wants } from '../../intake/facts/wants'
import { wetSource } from '../../intake/questions/wet-source'
import type { Reader } from '../../intake/reader'
import type { Lag, StepRule } from '../rules'
import { byTimeWhen, need, sourceOf } from './need'
import { step } from './step'

const wet = (r: Reader): boolean => wants(r, 'cabin') && isWet(r)
const treated = (r: Reader): boolean => wet(r) && !firstStageOnly(r)
const lifted = (r: Reader): boolean => wants(r, 'cabin') && liftsCarpet(r) && !firstStageOnly(r)

/** Elapsed minutes a wet cabin dries with warm air and a dehumidifier (common practice, no source). */
export const dryingLag: Readonly<Record<'surface' | 'soaked' | 'standing', number>> = {
  surface: 1080,
  soaked: 4320,
  standing: 5760,
}
const lagOf = (r: Reader): number => {
  const d = dampClass(r)
  return d === 'dry' ? 0 : dryingLag[d]
}
const dry = (minutes: number): Lag => ({ minutes, kind: 'elapsed', blocks: 'car', why: 'dry' })
/** The first look comes after twelve hours; visits share the rest of the wait. */
const FIRST_LOOK = 720
const visits = (r: Reader): number => Math.round(lagOf(r) / FIRST_LOOK)
const floors = (r: Reader): number => 0.4 + 0.6 * Math.min(3, wetPlaces(r).length)

const lift: StepRule['need'] = (r) =>
  lifted(r) ? need('lift-carpet', 1, 'car', floors(r) * (dirtyWater(r) ? 1.5 : 1)) : null

const waterCautions = (r: Reader): readonly string[] => [
  'wet-electrics',
  ...(dirtyWater(r) ? ['dirty-water'] : []),
]

export const damp: readonly StepRule[] = [
  step({
    id: 'moisture-map',
    track: 'cabin',
    order: 132,
    after: ['check-in', 'look-over', 'rodent-wipe', 'cabin-empty'],
    kit: ['moisture-meter'],
    source: sourceOf('moisture-map'),
    cautions: waterCautions,
    need: (r) => (wet(r) ? need('moisture-map', 1, 'car', 0.5 + 0.5 * floors(r)) : null),
  }),
  step({
    id: 'water-test',
    track: 'cabin',
    order: 134,
    after: ['check-in', 'look-over', 'cabin-empty', 'moisture-map'],
    source: sourceOf('water-test'),
    cautions: waterCautions,
    need: (r) => {
      if (!wet(r) || is(r, wetSource, 'flood', 'sewage', 'left-open')) return null
      return need('water-test', 1, 'car', is(r, wetSource, 'repaired') ? 0.6 : 1)
    },
  }),
  step({
    id: 'drains',
    track: 'cabin',
    order: 136,
    after: ['check-in', 'look-over'],
    source: sourceOf('drains'),
    need: (r) => (wet(r) && leakOpen(r) ? need('drains', 1, 'car') : null),
  }),
  step({
    id: 'leak-cover',
    track: 'cabin',
    order: 140,
    after: ['water-test', 'drains', 'moisture-map'],
    source: sourceOf('leak-cover'),
    cautions: waterCautions,
    need: (r) => (wet(r) && leakOpen(r) ? need('leak-cover', 1, 'car') : null),
  }),
  step({
    id: 'leak-proof',
    track: 'cabin',
    order: 142,
    after: ['leak-cover', 'water-test', 'drains'],
    bay: false,
    outside: true,
    hold: 'leak',
    duties: ['leak'],
    source: sourceOf('leak-proof'),
    cautions: () => ['licensed-trade'],
    need: (r) => (wet(r) && leakOpen(r) ? need('leak-proof', 1, 'car') : null),
  }),
  step({
    id: 'lift-carpet',
    track: 'cabin',
    order: 146,
    after: ['leak-proof', 'water-test', 'moisture-map', 'cabin-empty'],
    crewMax: 2,
    duties: ['clips', 'dry', 'belts'],
    source: sourceOf('lift-carpet'),
    cautions: waterCautions,
    need: lift,
    byTime: byTimeWhen(() => true, lift),
  }),
  step({
    id: 'water-out',
    track: 'cabin',
    order: 148,
    after: ['leak-proof', 'lift-carpet', 'moisture-map'],
    kit: ['extractor'],
    source: sourceOf('water-out'),
    cautions: (r) => [...waterCautions(r), 'electricity-near-water'],
    need: (r) => (treated(r) ? need('water-out', 1, 'car', floors(r)) : null),
  }),
  step({
    id: 'drying-start',
    track: 'cabin',
    order: 150,
    after: ['leak-proof', 'lift-carpet', 'water-out'],
    kit: ['dehumidifier'],
    source: sourceOf('drying-start'),
    cautions: () => ['electricity-near-water'],
    lag: (r) => (treated(r) ? dry(Math.min(FIRST_LOOK, lagOf(r))) : null),
    need: (r) => (treated(r) ? need('drying-start', 1, 'car') : null),
  }),
  step({
    id: 'drying-visits',
    track: 'cabin',
    order: 152,
    after: ['drying-start'],
    bay: false,
    kit: ['dehumidifier'],
    source: sourceOf('drying-visits'),
    lag: (r) => (treated(r) ? dry(Math.max(0, lagOf(r) - FIRST_LOOK)) : null),
    need: (r) => (treated(r) ? need('drying-visits', visits(r), 'visit') : null),
  }),
  step({
    id: 'dry-reading',
    track: 'cabin',
    order: 154,
    after: ['drying-visits', 'drying-start'],
    kit: ['moisture-meter'],
    hold: 'dry',
    duties: ['dry'],
    source: sourceOf('dry-reading'),
    // Two readings against a dry spot of the same car, twelve hours apart.
    need: (r) => (treated(r) ? need('dry-reading', 2, 'visit') : null),
  }),
  step({
    id: 'carpet-refit',
    track: 'cabin',
    order: 350,
    after: ['dry-reading', 'mould-again', 'lift-carpet', 'cabin-vacuum'],
    crewMax: 2,
    duties: ['clips', 'belts'],
    source: sourceOf('carpet-refit'),
    cautions: () => ['restraints'],
    need: (r) => (lifted(r) ? need('carpet-refit', 1, 'car', floors(r)) : null),
  }),
]
