import { danger } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const WET_WHERE_OPTIONS = [
  'front-floor',
  'rear-floor',
  'boot',
  'front-luggage',
  'headliner',
  'seats',
] as const
export type WetWhere = (typeof WET_WHERE_OPTIONS)[number]

export const wetWhere: Question<readonly WetWhere[]> = question({
  id: 'wet-where',
  topic: 'water',
  stage: 'first',
  kind: 'multi',
  options: WET_WHERE_OPTIONS,
  unsureAllowed: true,
  likely: [
    [['front-floor'], 0.4],
    [['front-floor', 'rear-floor'], 0.25],
    [['boot'], 0.25],
    [['front-floor', 'seats'], 0.1],
  ],
  likelySource: 'own estimate',
  asked: (r) => danger(r, 'wet'),
  reply: (r) => byWeight(r, wetWhere, ['headliner', 'front-luggage']),
})
