import { danger, service } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'
import { body } from './body'

export const ROOF_KIND_OPTIONS = ['cloth', 'vinyl', 'hard'] as const
export type RoofKind = (typeof ROOF_KIND_OPTIONS)[number]

export const roofKind: Question<RoofKind> = question({
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
  reply: (r) => byOption(r, roofKind),
})
