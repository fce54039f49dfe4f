import { has } from '../../intake/facts/has'
import { highVoltage } from '../../intake/facts/high-voltage'
import { is } from '../../intake/facts/is'
import { sizeFactor } from '../../intake/facts/size-factor'
import { wants } from '../../intake/facts/wants'
import { cabinMarks } from '../../intake/questions/cabin-marks'
import { dangers } from '../../intake/questions/dangers'
import { jacking } from '../../intake/questions/jacking'
import type { StepRule } from '../rules'
import { need, sourceOf } from './need'
import { step } from './step'

const arrived: readonly string[] = ['check-in', 'film-evidence', 'look-over']

export const underside: readonly StepRule[] = [
  step({
    id: 'engine-bay',
    track: 'body',
    order: 203,
    // Nests and chewed wires are looked for before water goes near them.
    after: [...arrived, 'rodent-wipe', 'wiring-look'],
    masks: ['air-intake', 'connectors', 'alternator'],
    source: sourceOf('engine-bay'),
    cautions: (r) => ['engine-wash', ...(highVoltage(r) ? ['high-voltage'] : [])],
    need: (r) => (wants(r, 'engine-bay') ? need('engine-bay', 1, 'car') : null),
  }),
  step({
    id: 'underside',
    track: 'wheels',
    order: 206,
    after: [...arrived, 'wheels-arches'],
    lift: true,
    kit: ['lift'],
    source: sourceOf('underside'),
    cautions: (r) => ['lifting', ...(highVoltage(r) ? ['high-voltage'] : [])],
    need: (r) => {
      if (!wants(r, 'underside') || is(r, jacking, 'rusty')) return null
      const salted = has(r, cabinMarks, 'salt') || has(r, dangers, 'not-driving') ? 1.2 : 1
      return need('underside', 1, 'car', sizeFactor(r) * salted)
    },
  }),
]
