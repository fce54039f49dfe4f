import { danger } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const GROWTH_OPTIONS = [
  'mould-hard',
  'mould-textile',
  'mould-headliner',
  'mould-under-carpet',
  'nest',
  'droppings',
] as const
export type Growth = (typeof GROWTH_OPTIONS)[number]

export const growth: Question<readonly Growth[]> = question({
  id: 'growth',
  topic: 'water',
  stage: 'first',
  kind: 'multi',
  options: GROWTH_OPTIONS,
  unsureAllowed: true,
  likely: [
    [['mould-hard'], 0.3],
    [['mould-textile'], 0.35],
    [['mould-textile', 'mould-under-carpet'], 0.15],
    [['droppings'], 0.1],
    [['nest', 'droppings'], 0.1],
  ],
  likelySource: 'own estimate',
  carSd: 0.06,
  asked: (r) => danger(r, 'growth'),
  reply: (r) =>
    byWeight(
      r,
      growth,
      ['nest', 'droppings', 'mould-headliner', 'mould-under-carpet', 'mould-textile', 'mould-hard'],
      { nest: 'rodents', droppings: 'rodents' },
    ),
})
