import { history, service } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const RIDE_OPTIONS = ['normal', 'lowered', 'raised'] as const
export type Ride = (typeof RIDE_OPTIONS)[number]

export const ride: Question<Ride> = question({
  id: 'ride',
  topic: 'wheels',
  stage: 'narrow',
  kind: 'choice',
  options: RIDE_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['normal', 0.85],
    ['lowered', 0.1],
    ['raised', 0.05],
  ],
  likelySource: 'own estimate',
  asked: (r) => (service(r, 'wheels-off') || service(r, 'underside')) && history(r),
  reply: (r) => byOption(r, ride),
})
