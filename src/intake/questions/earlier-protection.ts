import { history, wantsPaint } from '../conditions'
import { question } from '../question'

export const EARLIER_PROTECTION_OPTIONS = [
  'wax',
  'silicone',
  'coating',
  'scratch-remover',
  'unknown-bottle',
] as const
export type EarlierProtection = (typeof EARLIER_PROTECTION_OPTIONS)[number]

export const earlierProtection = question<readonly EarlierProtection[]>({
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
})
