import { has } from '../../intake/facts/has'
import { hasRodents, mouldSquare, mouldWay } from '../../intake/facts/mould'
import { wants } from '../../intake/facts/wants'
import { growth } from '../../intake/questions/growth'
import type { Reader } from '../../intake/reader'
import type { Need, StepRule } from '../rules'
import type { MinutesKey } from './minutes'
import { byTimeWhen, need, sourceOf } from './need'
import { step } from './step'

const inHouse = (r: Reader): boolean => {
  if (!wants(r, 'cabin')) return false
  const way = mouldWay(r)
  return way === 'in-house' || way === 'decision'
}

/** A hand of growth is the row of the table; a coin takes three fifths, a tray nearly twice (own estimate). */
const spread = (r: Reader): number => 0.6 + 4 * mouldSquare(r)

const treat =
  (key: MinutesKey, hardOnly = false): StepRule['need'] =>
  (r): Need | null =>
    inHouse(r) && (!hardOnly || has(r, growth, 'mould-hard') || r.value(growth) === undefined)
      ? need(key, 1, 'car', spread(r))
      : null

const dry: readonly string[] = ['leak-proof', 'dry-reading', 'lift-carpet', 'rodent-wipe']
const ppe = ['mould'] as const
const rodents =
  (key: MinutesKey): StepRule['need'] =>
  (r) =>
    hasRodents(r) ? need(key, 1, 'car') : null

export const mould: readonly StepRule[] = [
  step({
    id: 'rodent-air',
    track: 'cabin',
    order: 120,
    after: ['check-in'],
    source: sourceOf('rodent-air'),
    cautions: () => ['rodents'],
    lag: (r) =>
      hasRodents(r) ? { minutes: 30, kind: 'elapsed', blocks: 'car', why: 'dwell' } : null,
    need: rodents('rodent-air'),
  }),
  step({
    id: 'rodent-soak',
    materials: ['disinfectant'],
    track: 'cabin',
    order: 122,
    after: ['rodent-air'],
    source: sourceOf('rodent-soak'),
    cautions: () => ['rodents', 'disinfectant'],
    lag: (r) =>
      hasRodents(r) ? { minutes: 10, kind: 'elapsed', blocks: 'car', why: 'dwell' } : null,
    need: rodents('rodent-soak'),
  }),
  step({
    id: 'rodent-wipe',
    track: 'cabin',
    order: 124,
    after: ['rodent-soak'],
    source: sourceOf('rodent-wipe'),
    cautions: () => ['rodents', 'waste'],
    need: rodents('rodent-wipe'),
    byTime: byTimeWhen(() => true, rodents('rodent-wipe')),
  }),
  step({
    id: 'wiring-look',
    track: 'cabin',
    order: 126,
    after: ['rodent-wipe'],
    source: sourceOf('wiring-look'),
    cautions: () => ['licensed-trade', 'battery'],
    need: rodents('wiring-look'),
  }),
  step({
    id: 'mould-hepa',
    track: 'cabin',
    order: 160,
    after: dry,
    kit: ['hepa-vacuum'],
    source: sourceOf('mould-hepa'),
    cautions: () => ppe,
    need: treat('mould-hepa'),
    byTime: byTimeWhen(() => true, treat('mould-hepa')),
  }),
  step({
    id: 'mould-wipe',
    track: 'cabin',
    order: 162,
    after: [...dry, 'mould-hepa'],
    kit: ['hepa-vacuum'],
    source: sourceOf('mould-wipe'),
    cautions: () => ppe,
    need: treat('mould-wipe'),
    byTime: byTimeWhen(() => true, treat('mould-wipe')),
  }),
  step({
    id: 'mould-disinfect',
    materials: ['disinfectant'],
    track: 'cabin',
    order: 164,
    after: [...dry, 'mould-wipe'],
    kit: ['hepa-vacuum'],
    source: sourceOf('mould-disinfect'),
    cautions: () => [...ppe, 'disinfectant'],
    // The label sets how long it stays wet; without one there is no timer.
    need: treat('mould-disinfect', true),
    byTime: byTimeWhen(() => true, treat('mould-disinfect', true)),
  }),
  step({
    id: 'mould-dry',
    track: 'cabin',
    order: 166,
    after: [...dry, 'mould-wipe', 'mould-disinfect'],
    bay: false,
    source: sourceOf('mould-dry'),
    lag: (r) => (inHouse(r) ? { minutes: 240, kind: 'elapsed', blocks: 'car', why: 'dry' } : null),
    need: (r) => (inHouse(r) ? need('mould-dry', 1, 'car') : null),
  }),
  step({
    id: 'mould-again',
    track: 'cabin',
    order: 168,
    after: ['mould-hepa', 'mould-wipe', 'mould-disinfect', 'mould-dry'],
    kit: ['hepa-vacuum'],
    source: sourceOf('mould-again'),
    cautions: () => [...ppe, 'waste'],
    need: treat('mould-again'),
  }),
]
