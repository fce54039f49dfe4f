import { danger } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const DRIVE_STATE_OPTIONS = [
  'no-start',
  'weak-brakes',
  'no-steering',
  'flat-tyres',
  'flat-battery',
] as const
export type DriveState = (typeof DRIVE_STATE_OPTIONS)[number]

export const driveState: Question<readonly DriveState[]> = question({
  id: 'drive-state',
  topic: 'car',
  stage: 'first',
  kind: 'multi',
  options: DRIVE_STATE_OPTIONS,
  unsureAllowed: true,
  likely: [
    [['flat-battery'], 0.4],
    [['no-start'], 0.3],
    [['no-start', 'flat-tyres'], 0.2],
    [['weak-brakes', 'flat-tyres'], 0.1],
  ],
  likelySource: 'own estimate',
  asked: (r) => danger(r, 'not-driving'),
  reply: (r) =>
    byWeight(
      r,
      driveState,
      ['weak-brakes', 'no-steering', 'no-start', 'flat-tyres', 'flat-battery'],
      {
        'weak-brakes': 'carried',
        'no-steering': 'carried',
        'no-start': 'pushed',
        'flat-tyres': 'pushed',
        'flat-battery': 'battery',
      },
    ),
})
