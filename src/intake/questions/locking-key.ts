import { service } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const LOCKING_KEY_OPTIONS = ['have', 'none-needed', 'missing'] as const
export type LockingKey = (typeof LOCKING_KEY_OPTIONS)[number]

export const lockingKey: Question<LockingKey> = question({
  id: 'locking-key',
  topic: 'wheels',
  stage: 'narrow',
  kind: 'choice',
  options: LOCKING_KEY_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['have', 0.6],
    ['none-needed', 0.3],
    ['missing', 0.1],
  ],
  likelySource: 'own estimate',
  asked: (r) => service(r, 'wheels-off'),
  reply: (r) => byOption(r, lockingKey),
})
