import { danger } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const WET_SOURCE_OPTIONS = [
  'repaired',
  'open',
  'unknown',
  'left-open',
  'flood',
  'sewage',
] as const
export type WetSource = (typeof WET_SOURCE_OPTIONS)[number]

export const wetSource: Question<WetSource> = question({
  id: 'wet-source',
  topic: 'water',
  stage: 'first',
  kind: 'choice',
  options: WET_SOURCE_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['unknown', 0.65],
    ['open', 0.15],
    ['repaired', 0.1],
    ['left-open', 0.07],
    ['flood', 0.03],
  ],
  likelySource: 'own estimate',
  asked: (r) => danger(r, 'wet'),
  reply: (r) => byOption(r, wetSource),
})
