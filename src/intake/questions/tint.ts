import { service } from '../conditions'
import { question } from '../question'
import { filmWhere } from './film-where'

export const TINT_OPTIONS = ['film-on-glass', 'heated-glass', 'film-on-screen'] as const
export type Tint = (typeof TINT_OPTIONS)[number]

export const tint = question<readonly Tint[]>({
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
  asked: (r) => service(r, 'glass') || r.value(filmWhere)?.includes('glass') === true,
})
