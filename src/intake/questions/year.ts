import { question } from '../question'

export const year = question<number>({
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
})
