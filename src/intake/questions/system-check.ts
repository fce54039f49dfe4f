import { is } from '../facts/is'
import { type Question, question } from '../question'
import { byOption } from '../reply'
import { clothTest } from './cloth-test'
import { finish } from './finish'
import { year } from './year'

export const SYSTEM_CHECK_OPTIONS = ['sure-colour', 'maybe-metal-dust'] as const
export type SystemCheck = (typeof SYSTEM_CHECK_OPTIONS)[number]

export const systemCheck: Question<SystemCheck> = question({
  id: 'system-check',
  topic: 'paint',
  stage: 'narrow',
  kind: 'choice',
  options: SYSTEM_CHECK_OPTIONS,
  check: true,
  asked: (r) =>
    is(r, finish, 'metallic') &&
    is(r, clothTest, 'colour') &&
    r.as(year, (built) => built > 2000) === true,
  reply: (r) => byOption(r, systemCheck),
})
