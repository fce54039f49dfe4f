import { has } from '../../intake/facts/has'
import { vehicleKind } from '../../intake/facts/vehicle-kind'
import { dangers } from '../../intake/questions/dangers'
import { driveState } from '../../intake/questions/drive-state'
import { filmState } from '../../intake/questions/film-state'
import { keys } from '../../intake/questions/keys'
import { PLACE_HAS_OPTIONS, placeHas } from '../../intake/questions/place-has'
import type { StepRule } from '../rules'
import { need, sourceOf, withRow } from './need'
import { step } from './step'

/** Boats, motorhomes and motorcycles: a look is priced, the work is not before it. */
const unlikeACar =
  (key: 'test-area' | 'hourly-scope'): StepRule['need'] =>
  (r) =>
    vehicleKind(r) === 'car' ? null : need(key, 1, 'car')

export const arrival: readonly StepRule[] = [
  step({
    id: 'check-in',
    anyVehicle: true,
    track: 'arrival',
    order: 100,
    source: sourceOf('check-in'),
    need: (r) => {
      const plain = need('check-in', 1, 'car')
      if (!plain || !has(r, dangers, 'peeling', 'film', 'wet', 'growth', 'not-driving'))
        return plain
      return withRow(plain, 'check-in-extra')
    },
  }),
  step({
    id: 'film-evidence',
    track: 'arrival',
    order: 102,
    after: ['check-in'],
    source: sourceOf('film-evidence'),
    need: (r) =>
      has(r, dangers, 'film') && has(r, filmState, 'started')
        ? need('film-evidence', 1, 'car')
        : null,
  }),
  step({
    id: 'move-car',
    track: 'arrival',
    order: 104,
    after: ['check-in'],
    crewMax: 2,
    source: sourceOf('move-car'),
    cautions: () => ['moving'],
    need: (r) =>
      has(r, dangers, 'not-driving') &&
      has(r, driveState, 'no-start', 'weak-brakes', 'no-steering', 'flat-tyres')
        ? need('move-car', 1, 'car')
        : null,
  }),
  step({
    id: 'battery-support',
    track: 'arrival',
    order: 106,
    after: ['check-in'],
    kit: ['battery-support'],
    duties: ['battery'],
    source: sourceOf('battery-support'),
    cautions: () => ['battery'],
    need: (r) =>
      has(r, keys, 'weak-battery') ||
      (has(r, dangers, 'not-driving') && has(r, driveState, 'flat-battery', 'no-start'))
        ? need('battery-support', 1, 'car')
        : null,
  }),
  step({
    id: 'away-set-up',
    anyVehicle: true,
    track: 'arrival',
    order: 108,
    after: ['check-in'],
    bay: false,
    source: sourceOf('away-set-up'),
    cautions: () => ['electricity-near-water', 'waste'],
    need: (r) => {
      const there = r.value(placeHas)
      if (there === undefined) return null
      return need('away-set-up', 1 + PLACE_HAS_OPTIONS.length - there.length, 'piece')
    },
  }),
  step({
    id: 'look-over',
    anyVehicle: true,
    track: 'arrival',
    order: 110,
    after: ['check-in', 'film-evidence'],
    source: sourceOf('look-over'),
    need: () => need('look-over', 1, 'car'),
  }),
  step({
    id: 'test-area',
    anyVehicle: true,
    track: 'body',
    order: 113,
    after: ['check-in', 'look-over'],
    hold: 'yes',
    source: sourceOf('test-area'),
    cautions: () => ['old-paint-dust', 'product-label'],
    need: unlikeACar('test-area'),
  }),
  step({
    id: 'hourly-scope',
    anyVehicle: true,
    open: true,
    track: 'body',
    order: 115,
    after: ['check-in', 'look-over', 'test-area'],
    source: sourceOf('hourly-scope'),
    cautions: () => ['old-paint-dust'],
    need: unlikeACar('hourly-scope'),
  }),
]
