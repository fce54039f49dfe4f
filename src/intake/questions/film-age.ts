import { danger, service, spare } from '../conditions'
import { question } from '../question'

export const filmAge = question<number>({
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
})
