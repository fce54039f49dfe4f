import { wants } from '../../intake/facts/wants'
import type { StepRule } from '../rules'
import { need, sourceOf } from './need'
import { step } from './step'

export const glass: readonly StepRule[] = [
  step({
    id: 'glass-outside',
    track: 'finish',
    order: 524,
    // After polish dust, before the coating is laid beside it.
    after: ['dry', 'film-glass', 'gap-rinse', 'panel-wipe'],
    source: sourceOf('glass-outside'),
    cautions: () => ['heated-glass', 'product-label'],
    need: (r) => (wants(r, 'glass') ? need('glass-outside', 1, 'car') : null),
  }),
]
