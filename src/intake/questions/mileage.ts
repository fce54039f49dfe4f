import { history } from '../conditions'
import { question } from '../question'
import { body } from './body'

export const mileage = question<number>({
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
})
