import { matte, wantsPaint } from '../conditions'
import { question } from '../question'

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

export const defects = question<readonly Defects[]>({
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
})
