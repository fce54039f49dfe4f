import { type Question, question } from '../question'
import { byLimit } from '../reply'

export const year: Question<number> = question({
  id: 'year',
  topic: 'car',
  stage: 'first',
  kind: 'year',
  unsureAllowed: true,
  likely: [
    [1985, 0.1],
    [1998, 0.2],
    [2008, 0.35],
    [2017, 0.35],
  ],
  likelySource: 'own estimate',
  carSd: 0.05,
  min: 1900,
  max: 2100,
  reply: (r) =>
    byLimit(
      r,
      year,
      [
        [1979, 'classic'],
        [1999, 'old'],
        [2009, 'middle'],
      ],
      'recent',
    ),
})
