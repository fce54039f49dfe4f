import { danger } from '../conditions'
import { question } from '../question'

export const freshPaintWeeks = question<number>({
  id: 'fresh-paint-weeks',
  topic: 'paint',
  stage: 'first',
  kind: 'number',
  unsureAllowed: true,
  likely: [
    [1, 0.2],
    [4, 0.3],
    [8, 0.3],
    [16, 0.2],
  ],
  likelySource: 'own estimate',
  asked: (r) => danger(r, 'fresh-paint'),
  unit: 'weeks',
  units: ['weeks'],
  min: 0,
  max: 60,
})
