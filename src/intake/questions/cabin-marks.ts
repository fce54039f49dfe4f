import { crowded } from '../conditions'
import { question } from '../question'
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

export const cabinMarks = question<readonly CabinMarks[]>({
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
  asked: (r) =>
    !crowded(r) && (r.value(cabinState) === 'family' || r.value(cabinState) === 'neglected'),
})
