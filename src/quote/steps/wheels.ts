import { accessFactor } from '../../intake/facts/access-factor'
import { has } from '../../intake/facts/has'
import { is } from '../../intake/facts/is'
import { wants } from '../../intake/facts/wants'
import { jacking } from '../../intake/questions/jacking'
import { wheelMarks } from '../../intake/questions/wheel-marks'
import { wheels as wheelKind } from '../../intake/questions/wheels'
import type { Reader } from '../../intake/reader'
import type { StepRule } from '../rules'
import type { MinutesKey } from './minutes'
import { need, sourceOf } from './need'
import { step } from './step'

/** Wheels come off where it is asked for and the sills can carry the car. */
const off = (r: Reader): boolean => wants(r, 'wheels-off') && !is(r, jacking, 'rusty')

const each =
  (key: MinutesKey): StepRule['need'] =>
  (r) =>
    off(r) ? need(key, 4, 'wheel') : null

export const wheels: readonly StepRule[] = [
  step({
    id: 'wheels-off',
    track: 'wheels',
    order: 300,
    after: ['check-in', 'look-over', 'wheels-arches'],
    kit: ['stands', 'torque-wrench'],
    duties: ['torque', 'recheck-distance'],
    source: sourceOf('wheels-off'),
    cautions: (r) => (is(r, wheelKind, 'cracked') ? ['lifting', 'cracked-wheel'] : ['lifting']),
    need: (r) => (off(r) ? need('wheels-off', 4, 'wheel', accessFactor(r)) : null),
  }),
  step({
    id: 'wheels-clean',
    track: 'wheels',
    order: 304,
    after: ['wheels-off'],
    kit: ['stands', 'torque-wrench'],
    source: sourceOf('wheels-clean'),
    cautions: (r) =>
      is(r, wheelKind, 'polished-bare') ? ['wheel-cleaner', 'acid-and-metal'] : ['wheel-cleaner'],
    need: each('wheels-clean'),
  }),
  step({
    id: 'wheel-stickers',
    track: 'wheels',
    order: 306,
    after: ['wheels-clean'],
    kit: ['stands', 'torque-wrench'],
    source: sourceOf('wheel-stickers'),
    cautions: () => ['adhesive-solvent'],
    need: (r) =>
      off(r) && has(r, wheelMarks, 'stickers') ? need('wheel-stickers', 4, 'wheel') : null,
  }),
  step({
    id: 'calipers',
    track: 'wheels',
    order: 308,
    after: ['wheels-off'],
    kit: ['stands', 'torque-wrench'],
    source: sourceOf('calipers'),
    cautions: () => ['brake-surfaces', 'lifting'],
    need: each('calipers'),
  }),
  step({
    id: 'wheels-coating',
    materials: ['wheel-coating'],
    track: 'wheels',
    order: 312,
    after: ['wheels-clean', 'wheel-stickers', 'calipers', 'wash', 'second-wash', 'stickers'],
    pausable: false,
    kit: ['stands', 'torque-wrench'],
    source: sourceOf('wheels-coating'),
    masks: ['hub-faces', 'nut-seats', 'discs'],
    cautions: () => ['coating-label', 'brake-surfaces'],
    lag: (r) =>
      wants(r, 'protect') && off(r)
        ? { minutes: 60, kind: 'elapsed', blocks: 'bay', why: 'cure' }
        : null,
    need: (r) => (wants(r, 'protect') && off(r) ? need('wheels-coating', 4, 'wheel') : null),
  }),
  step({
    id: 'wheels-on',
    track: 'wheels',
    order: 396,
    after: ['wheels-off', 'wheels-clean', 'wheel-stickers', 'calipers', 'wheels-coating'],
    kit: ['stands', 'torque-wrench'],
    duties: ['torque', 'recheck-distance'],
    source: sourceOf('wheels-on'),
    cautions: () => ['wheel-nuts', 'lifting'],
    need: (r) => (off(r) ? need('wheels-on', 4, 'wheel', accessFactor(r)) : null),
  }),
]
