import { cabinWork } from '../../intake/facts/cabin-scope'
import { liftsCarpet } from '../../intake/facts/damp'
import { has } from '../../intake/facts/has'
import { wants } from '../../intake/facts/wants'
import { dangers } from '../../intake/questions/dangers'
import type { Reader } from '../../intake/reader'
import type { StepRule } from '../rules'
import { need, sourceOf } from './need'
import { step } from './step'

/** Parts were off the car, or its battery or water needs proof, so that refit has to be checked. */
const refitted = (r: Reader): boolean =>
  wants(r, 'wheels-off') ||
  has(r, dangers, 'not-driving') ||
  (has(r, dangers, 'wet', 'growth') && cabinWork(r) && liftsCarpet(r))

/** Ids of everything that may be done before the last three steps; filled by the list of steps. */
export const handOver = (worked: readonly string[]): readonly StepRule[] => [
  step({
    id: 'clean-down',
    anyVehicle: true,
    track: 'finish',
    order: 900,
    after: worked,
    source: sourceOf('clean-down'),
    cautions: () => ['waste', 'oily-rags'],
    need: () => need('clean-down', 1, 'car'),
  }),
  step({
    id: 'refit-checks',
    track: 'finish',
    order: 910,
    after: [...worked, 'clean-down'],
    source: sourceOf('refit-checks'),
    cautions: (r) => (wants(r, 'wheels-off') ? ['wheel-nuts'] : ['licensed-trade']),
    need: (r) => (refitted(r) ? need('refit-checks', 1, 'car') : null),
  }),
  step({
    id: 'hand-over',
    anyVehicle: true,
    track: 'finish',
    order: 920,
    after: [...worked, 'clean-down', 'refit-checks'],
    source: sourceOf('hand-over'),
    need: () => need('hand-over', 1, 'car'),
  }),
]
