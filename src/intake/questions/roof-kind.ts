import { danger, service } from '../conditions'
import { question } from '../question'
import { body } from './body'

export const ROOF_KIND_OPTIONS = ['cloth', 'vinyl', 'hard'] as const
export type RoofKind = (typeof ROOF_KIND_OPTIONS)[number]

export const roofKind = question<RoofKind>({
  id: 'roof-kind',
  topic: 'car',
  stage: 'first',
  kind: 'choice',
  options: ROOF_KIND_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['cloth', 0.65],
    ['vinyl', 0.2],
    ['hard', 0.15],
  ],
  likelySource: 'own estimate',
  asked: (r) => danger(r, 'soft-roof') || r.value(body) === 'convertible' || service(r, 'roof'),
})
