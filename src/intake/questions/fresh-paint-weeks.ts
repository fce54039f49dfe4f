import { danger } from '../conditions'
import { type Question, question } from '../question'
import { byLimit } from '../reply'

export const freshPaintWeeks: Question<number> = question({
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
  reply: (r) =>
    byLimit(
      r,
      freshPaintWeeks,
      [
        [2, 'soft'],
        [13, 'fresh'],
      ],
      'aired',
    ),
})
