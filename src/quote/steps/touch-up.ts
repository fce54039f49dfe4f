import { has } from '../../intake/facts/has'
import { is } from '../../intake/facts/is'
import { wants } from '../../intake/facts/wants'
import { defects } from '../../intake/questions/defects'
import { wish } from '../../intake/questions/wish'
import type { Reader } from '../../intake/reader'
import type { Lag, StepRule } from '../rules'
import { need, sourceOf } from './need'
import { step } from './step'

/** Air-dry touch-up needs a day at least, better three to seven (common practice, no source). */
const cure: Lag = { minutes: 1440, kind: 'elapsed', blocks: 'car', why: 'cure' }

/** Chips are filled where paint is worked on and the owner does not want the car kept as it is. */
const chipped = (r: Reader): boolean =>
  wants(r, 'paint') && has(r, defects, 'chips') && !is(r, wish, 'preserve')
const levelled = (r: Reader): boolean => chipped(r) && is(r, wish, 'show')

export const touchUp: readonly StepRule[] = [
  step({
    id: 'touch-up-level',
    track: 'paint',
    order: 450,
    after: ['test-spot', 'test-spot-yes', 'clay', 'decontamination', 'readings'],
    source: sourceOf('touch-up-level'),
    materials: ['touch-up-paint'],
    cautions: () => ['paint-vapour'],
    lag: (r) => (levelled(r) ? cure : null),
    need: (r) => (levelled(r) ? need('touch-up-level', 1, 'car') : null),
  }),
  step({
    id: 'touch-up',
    track: 'paint',
    order: 510,
    after: ['panel-wipe', 'cold-reading', 'headlight-layer'],
    source: sourceOf('touch-up'),
    materials: ['touch-up-paint'],
    cautions: () => ['paint-vapour'],
    lag: (r) => (chipped(r) && !levelled(r) ? cure : null),
    need: (r) => (chipped(r) && !levelled(r) ? need('touch-up', 1, 'car') : null),
  }),
]
