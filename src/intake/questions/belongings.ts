import { danger, history, service } from '../conditions'
import { question } from '../question'

export const BELONGINGS_OPTIONS = [
  'child-seats',
  'dash-camera',
  'added-wiring',
  'alarm-trouble',
] as const
export type Belongings = (typeof BELONGINGS_OPTIONS)[number]

export const belongings = question<readonly Belongings[]>({
  id: 'belongings',
  topic: 'cabin',
  stage: 'narrow',
  kind: 'multi',
  options: BELONGINGS_OPTIONS,
  asked: (r) => history(r) && (service(r, 'cabin') || danger(r, 'wet') || danger(r, 'growth')),
})
