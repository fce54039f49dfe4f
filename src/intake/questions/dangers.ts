import { crowded } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const DANGERS_OPTIONS = [
  'fresh-paint',
  'film',
  'peeling',
  'matte',
  'wet',
  'growth',
  'soft-roof',
  'not-driving',
] as const
export type Dangers = (typeof DANGERS_OPTIONS)[number]

export const dangers: Question<readonly Dangers[]> = question({
  id: 'dangers',
  topic: 'car',
  stage: 'first',
  kind: 'multi',
  options: DANGERS_OPTIONS,
  unsureAllowed: true,
  likely: [
    [[], 0.55],
    [['film'], 0.12],
    [['peeling'], 0.12],
    [['fresh-paint'], 0.06],
    [['wet'], 0.09],
    [['matte'], 0.02],
    [['growth', 'wet'], 0.04],
  ],
  likelySource: 'own estimate',
  carSd: 0.06,
  reply: (r) =>
    crowded(r)
      ? { key: 'reply.dangers.many' }
      : byWeight(r, dangers, [
          'growth',
          'wet',
          'fresh-paint',
          'matte',
          'film',
          'peeling',
          'not-driving',
          'soft-roof',
        ]),
})
