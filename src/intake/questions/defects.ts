import { matte, wantsPaint } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const DEFECTS_OPTIONS = [
  'haze',
  'wash-marks',
  'scratches',
  'nail-scratch',
  'chips',
  'dull',
  'etching',
  'overspray',
  'fallout',
  'burn-through',
  'rust',
] as const
export type Defects = (typeof DEFECTS_OPTIONS)[number]

export const defects: Question<readonly Defects[]> = question({
  id: 'defects',
  topic: 'paint',
  stage: 'first',
  kind: 'multi',
  options: DEFECTS_OPTIONS,
  unsureAllowed: true,
  likely: [
    [['wash-marks'], 0.35],
    [['haze', 'wash-marks'], 0.2],
    [['wash-marks', 'scratches'], 0.25],
    [['wash-marks', 'nail-scratch', 'chips'], 0.15],
    [['dull', 'etching'], 0.05],
  ],
  likelySource: 'own estimate',
  carSd: 0.05,
  asked: (r) => wantsPaint(r) && !matte(r),
  reply: (r) =>
    byWeight(
      r,
      defects,
      [
        'burn-through',
        'rust',
        'nail-scratch',
        'chips',
        'overspray',
        'fallout',
        'etching',
        'dull',
        'haze',
        'scratches',
        'wash-marks',
      ],
      {
        'nail-scratch': 'deep',
        overspray: 'bonded',
        fallout: 'bonded',
        scratches: 'marks',
        'wash-marks': 'marks',
      },
    ),
})
