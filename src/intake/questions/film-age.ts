import { danger, service, spare } from '../conditions'
import { type Question, question } from '../question'
import { byLimit } from '../reply'

export const filmAge: Question<number> = question({
  id: 'film-age',
  topic: 'film',
  stage: 'first',
  kind: 'number',
  unsureAllowed: true,
  likely: [
    [2, 0.2],
    [5, 0.3],
    [9, 0.3],
    [16, 0.2],
  ],
  likelySource: 'own estimate',
  carSd: 0.05,
  asked: (r) => danger(r, 'film') || (service(r, 'stickers') && spare(r)),
  unit: 'years',
  units: ['years'],
  min: 0,
  max: 60,
  reply: (r) =>
    byLimit(
      r,
      filmAge,
      [
        [6, 'young'],
        [14, 'old'],
      ],
      'very-old',
    ),
})
