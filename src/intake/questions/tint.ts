import { service } from '../conditions'
import { has } from '../facts/has'
import { type Question, question } from '../question'
import { byWeight } from '../reply'
import { filmWhere } from './film-where'

export const TINT_OPTIONS = ['film-on-glass', 'heated-glass', 'film-on-screen'] as const
export type Tint = (typeof TINT_OPTIONS)[number]

export const tint: Question<readonly Tint[]> = question({
  id: 'tint',
  topic: 'car',
  stage: 'narrow',
  kind: 'multi',
  options: TINT_OPTIONS,
  unsureAllowed: true,
  likely: [
    [['heated-glass'], 0.75],
    [['film-on-glass', 'heated-glass'], 0.2],
    [['film-on-screen', 'heated-glass'], 0.05],
  ],
  likelySource: 'own estimate',
  asked: (r) => service(r, 'glass') || has(r, filmWhere, 'glass'),
  reply: (r) => byWeight(r, tint, ['film-on-screen', 'film-on-glass', 'heated-glass']),
})
