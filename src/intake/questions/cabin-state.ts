import { service } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const CABIN_STATE_OPTIONS = ['tidy', 'family', 'neglected'] as const
export type CabinState = (typeof CABIN_STATE_OPTIONS)[number]

export const cabinState: Question<CabinState> = question({
  id: 'cabin-state',
  topic: 'cabin',
  stage: 'first',
  kind: 'choice',
  options: CABIN_STATE_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['tidy', 0.3],
    ['family', 0.5],
    ['neglected', 0.2],
  ],
  likelySource: 'own estimate',
  carSd: 0.06,
  asked: (r) => service(r, 'cabin'),
  reply: (r) => byOption(r, cabinState),
})
