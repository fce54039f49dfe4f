import { danger, service } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'
import { roofKind } from './roof-kind'

export const ROOF_CHECK_OPTIONS = ['under-hard', 'no-soft'] as const
export type RoofCheck = (typeof ROOF_CHECK_OPTIONS)[number]

export const roofCheck: Question<RoofCheck> = question({
  id: 'roof-check',
  topic: 'car',
  stage: 'first',
  kind: 'choice',
  options: ROOF_CHECK_OPTIONS,
  check: true,
  asked: (r) => r.value(roofKind) === 'hard' && (danger(r, 'soft-roof') || service(r, 'roof')),
  reply: (r) => byOption(r, roofCheck),
})
