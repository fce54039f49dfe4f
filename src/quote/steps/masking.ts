import { ageAs } from '../../intake/facts/age'
import { finishSystem } from '../../intake/facts/finish-system'
import { sizeFactor } from '../../intake/facts/size-factor'
import type { StepRule } from '../rules'
import { need, sourceOf } from './need'
import { polishes } from './polish-scope'
import { step } from './step'

/** Years from which rubber and textured trim drink polish and take much longer to mask. */
const OLD_TRIM_YEARS = 25

export const masking: readonly StepRule[] = [
  step({
    id: 'mask-trim',
    track: 'paint',
    order: 420,
    after: ['references', 'readings', 'dry'],
    masks: ['rubber', 'textured-trim', 'badges', 'lamps', 'gaps'],
    source: sourceOf('mask-trim'),
    need: (r, c) => {
      if (!polishes(r, c)) return null
      const old = ageAs(r, c.nowYear, (years) => years >= OLD_TRIM_YEARS) ?? false
      return need(old ? 'mask-trim-old' : 'mask-trim', 1, 'car', sizeFactor(r))
    },
  }),
  step({
    id: 'tape-edges',
    track: 'paint',
    order: 426,
    after: ['references', 'readings', 'dry'],
    masks: ['edges', 'ridges', 'swage-lines', 'blend-edges'],
    source: sourceOf('tape-edges'),
    cautions: () => ['edges'],
    need: (r, c) => {
      const system = finishSystem(r)
      return polishes(r, c) && system !== 'lacquer' && system !== 'single-stage-metallic'
        ? need('tape-edges', 1, 'car', sizeFactor(r))
        : null
    },
  }),
]
