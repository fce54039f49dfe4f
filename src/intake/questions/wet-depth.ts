import { danger } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const WET_DEPTH_OPTIONS = ['surface', 'soaked', 'standing'] as const
export type WetDepth = (typeof WET_DEPTH_OPTIONS)[number]

export const wetDepth: Question<WetDepth> = question({
  id: 'wet-depth',
  topic: 'water',
  stage: 'first',
  kind: 'choice',
  options: WET_DEPTH_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['surface', 0.35],
    ['soaked', 0.5],
    ['standing', 0.15],
  ],
  likelySource: 'own estimate',
  carSd: 0.08,
  asked: (r) => danger(r, 'wet'),
  reply: (r) => byOption(r, wetDepth),
})
