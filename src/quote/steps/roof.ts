import { has } from '../../intake/facts/has'
import { roofWork, softRoof } from '../../intake/facts/soft-roof'
import { roofState } from '../../intake/questions/roof-state'
import type { StepRule } from '../rules'
import { need, sourceOf, withRow } from './need'
import { step } from './step'

const dayDry = { minutes: 1440, kind: 'elapsed', blocks: 'car', why: 'dry' } as const

export const roof: readonly StepRule[] = [
  step({
    id: 'roof-clean',
    track: 'roof',
    order: 216,
    after: ['check-in', 'look-over', 'wash', 'water-test', 'drains'],
    source: sourceOf('roof-clean'),
    cautions: () => ['roof'],
    lag: (r) => (roofWork(r) ? dayDry : null),
    need: (r) => {
      if (!roofWork(r)) return null
      const plain = need('roof-clean', 1, 'car', softRoof(r) === 'vinyl' ? 0.75 : 1)
      if (!plain || !has(r, roofState, 'dirty-green')) return plain
      return withRow(plain, 'roof-green')
    },
  }),
  step({
    id: 'roof-window',
    track: 'roof',
    order: 290,
    after: ['roof-clean', 'dry'],
    source: sourceOf('roof-window'),
    cautions: () => ['roof-window'],
    need: (r) =>
      roofWork(r) && has(r, roofState, 'plastic-cloudy') ? need('roof-window', 1, 'piece') : null,
  }),
  step({
    id: 'roof-proof',
    materials: ['roof-proofing'],
    track: 'roof',
    order: 576,
    after: ['roof-clean', 'roof-window', 'gap-rinse', 'panel-wipe', 'coating', 'wax'],
    pausable: false,
    masks: ['glass', 'paint-below-roof'],
    source: sourceOf('roof-proof'),
    cautions: () => ['roof', 'product-label'],
    lag: (r) => (roofWork(r) && softRoof(r) === 'cloth' ? dayDry : null),
    need: (r) => (roofWork(r) && softRoof(r) === 'cloth' ? need('roof-proof', 1, 'car') : null),
  }),
]
