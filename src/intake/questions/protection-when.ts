import { type Question, question } from '../question'
import { byOption } from '../reply'
import { earlierProtection } from './earlier-protection'

export const PROTECTION_WHEN_OPTIONS = ['this-year', 'some-years', 'long-ago'] as const
export type ProtectionWhen = (typeof PROTECTION_WHEN_OPTIONS)[number]

export const protectionWhen: Question<ProtectionWhen> = question({
  id: 'protection-when',
  topic: 'paint',
  stage: 'narrow',
  kind: 'choice',
  options: PROTECTION_WHEN_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['this-year', 0.35],
    ['some-years', 0.45],
    ['long-ago', 0.2],
  ],
  likelySource: 'own estimate',
  // Wax is gone by itself within months, so its age changes nothing.
  asked: (r) => r.value(earlierProtection)?.some((p) => p !== 'wax') === true,
  reply: (r) => byOption(r, protectionWhen),
})
