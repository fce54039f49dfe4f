import { question } from '../question'

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

export const dangers = question<readonly Dangers[]>({
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
})
