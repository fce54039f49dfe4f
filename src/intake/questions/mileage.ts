import { history } from '../conditions'
import { type Question, question } from '../question'
import { byLimit } from '../reply'
import { body } from './body'

export const mileage: Question<number> = question({
  id: 'mileage',
  topic: 'use',
  stage: 'narrow',
  kind: 'number',
  unsureAllowed: true,
  likely: [
    [30_000, 0.2],
    [90_000, 0.4],
    [160_000, 0.3],
    [240_000, 0.1],
  ],
  likelySource: 'own estimate',
  asked: (r) => history(r) && r.value(body) !== 'boat',
  unit: 'km',
  units: ['km', 'miles'],
  min: 0,
  max: 2_000_000,
  reply: (r) => byLimit(r, mileage, [[60_000, 'low']], 'high'),
})
