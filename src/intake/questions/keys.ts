import { history } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const KEYS_OPTIONS = ['weak-battery', 'code-needed', 'one-key'] as const
export type Keys = (typeof KEYS_OPTIONS)[number]

export const keys: Question<readonly Keys[]> = question({
  id: 'keys',
  topic: 'car',
  stage: 'narrow',
  kind: 'multi',
  options: KEYS_OPTIONS,
  unsureAllowed: true,
  likely: [
    [[], 0.7],
    [['weak-battery'], 0.15],
    [['one-key'], 0.15],
  ],
  likelySource: 'own estimate',
  asked: (r) => history(r),
  reply: (r) => byWeight(r, keys, KEYS_OPTIONS),
})
