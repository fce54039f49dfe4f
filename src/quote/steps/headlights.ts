import { wants } from '../../intake/facts/wants'
import type { StepRule } from '../rules'
import { need, sourceOf } from './need'
import { step } from './step'

export const headlights: readonly StepRule[] = [
  step({
    id: 'headlights',
    track: 'paint',
    order: 456,
    after: ['dry', 'mask-trim'],
    machine: true,
    source: sourceOf('headlights'),
    masks: ['paint-around-lamps'],
    cautions: () => ['heat-limit'],
    need: (r) => (wants(r, 'headlights') ? need('headlights', 1, 'piece') : null),
  }),
  step({
    id: 'headlight-layer',
    materials: ['headlamp-layer'],
    track: 'paint',
    order: 500,
    after: ['headlights', 'gap-rinse', 'panel-wipe'],
    pausable: false,
    source: sourceOf('headlight-layer'),
    cautions: () => ['coating-label'],
    lag: (r) =>
      wants(r, 'headlights') ? { minutes: 60, kind: 'elapsed', blocks: 'car', why: 'cure' } : null,
    need: (r) => (wants(r, 'headlights') ? need('headlight-layer', 1, 'piece') : null),
  }),
]
