import { olderThan, service } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const JACKING_OPTIONS = ['sound', 'rusty'] as const
export type Jacking = (typeof JACKING_OPTIONS)[number]

export const jacking: Question<Jacking> = question({
  id: 'jacking',
  topic: 'wheels',
  stage: 'narrow',
  kind: 'choice',
  options: JACKING_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['sound', 0.75],
    ['rusty', 0.25],
  ],
  likelySource: 'own estimate',
  asked: (r) => (service(r, 'wheels-off') || service(r, 'underside')) && olderThan(r, 2005),
  reply: (r) => byOption(r, jacking),
})
