import { question } from '../question'
import { clothTest } from './cloth-test'
import { finish } from './finish'
import { year } from './year'

export const SYSTEM_CHECK_OPTIONS = ['sure-colour', 'maybe-metal-dust'] as const
export type SystemCheck = (typeof SYSTEM_CHECK_OPTIONS)[number]

export const systemCheck = question<SystemCheck>({
  id: 'system-check',
  topic: 'paint',
  stage: 'narrow',
  kind: 'choice',
  options: SYSTEM_CHECK_OPTIONS,
  asked: (r) =>
    r.value(finish) === 'metallic' &&
    r.value(clothTest) === 'colour' &&
    (r.value(year) ?? 0) > 2000,
})
