import { wants } from '../../intake/facts/wants'
import type { StepRule } from '../rules'
import { budgetIsTight } from './budget-hours'
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
    // A tight budget buys clean glass, not polished glass.
    need: (r, c) =>
      wants(r, 'glass') ? need('glass-outside', 1, 'car', budgetIsTight(r, c) ? 0.6 : 1) : null,
  }),
]
