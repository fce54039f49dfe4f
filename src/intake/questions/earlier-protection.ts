import { history, wantsPaint } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const EARLIER_PROTECTION_OPTIONS = [
  'wax',
  'silicone',
  'coating',
  'scratch-remover',
  'unknown-bottle',
] as const
export type EarlierProtection = (typeof EARLIER_PROTECTION_OPTIONS)[number]

export const earlierProtection: Question<readonly EarlierProtection[]> = question({
  id: 'earlier-protection',
  topic: 'paint',
  stage: 'narrow',
  kind: 'multi',
  options: EARLIER_PROTECTION_OPTIONS,
  unsureAllowed: true,
  likely: [
    [['wax'], 0.4],
    [[], 0.3],
    [['silicone'], 0.1],
    [['scratch-remover', 'wax'], 0.1],
    [['coating'], 0.1],
  ],
  likelySource: 'own estimate',
  asked: (r) => wantsPaint(r) && history(r),
  reply: (r) =>
    byWeight(r, earlierProtection, [
      'scratch-remover',
      'silicone',
      'coating',
      'unknown-bottle',
      'wax',
    ]),
})
