import { danger, history, service } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const BELONGINGS_OPTIONS = [
  'child-seats',
  'dash-camera',
  'added-wiring',
  'alarm-trouble',
] as const
export type Belongings = (typeof BELONGINGS_OPTIONS)[number]

export const belongings: Question<readonly Belongings[]> = question({
  id: 'belongings',
  topic: 'cabin',
  stage: 'narrow',
  kind: 'multi',
  options: BELONGINGS_OPTIONS,
  asked: (r) => history(r) && (service(r, 'cabin') || danger(r, 'wet') || danger(r, 'growth')),
  reply: (r) =>
    byWeight(r, belongings, ['child-seats', 'alarm-trouble', 'added-wiring', 'dash-camera'], {
      'dash-camera': 'added-wiring',
    }),
})
