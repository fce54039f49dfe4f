import { crowded } from '../conditions'
import { is } from '../facts/is'
import { type Question, question } from '../question'
import { byWeight } from '../reply'
import { cabinState } from './cabin-state'

export const CABIN_MARKS_OPTIONS = [
  'pet-hair',
  'smoke',
  'milk',
  'urine',
  'vomit',
  'stains',
  'sand',
  'salt',
  'rubbish',
] as const
export type CabinMarks = (typeof CABIN_MARKS_OPTIONS)[number]

export const cabinMarks: Question<readonly CabinMarks[]> = question({
  id: 'cabin-marks',
  topic: 'cabin',
  stage: 'first',
  kind: 'multi',
  options: CABIN_MARKS_OPTIONS,
  unsureAllowed: true,
  likely: [
    [['stains'], 0.4],
    [['stains', 'pet-hair'], 0.2],
    [['stains', 'sand'], 0.2],
    [['smoke'], 0.1],
    [['milk', 'stains'], 0.1],
  ],
  likelySource: 'own estimate',
  carSd: 0.04,
  asked: (r) => !crowded(r) && is(r, cabinState, 'family', 'neglected'),
  reply: (r) =>
    byWeight(
      r,
      cabinMarks,
      ['urine', 'vomit', 'smoke', 'milk', 'pet-hair', 'stains', 'sand', 'salt', 'rubbish'],
      { urine: 'fluids', vomit: 'fluids', sand: 'dry', salt: 'dry', rubbish: 'dry' },
    ),
})
