import { olderThan, service } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const TRIM_OPTIONS = ['sticky', 'wood', 'brittle-clips'] as const
export type Trim = (typeof TRIM_OPTIONS)[number]

export const trim: Question<readonly Trim[]> = question({
  id: 'trim',
  topic: 'cabin',
  stage: 'narrow',
  kind: 'multi',
  options: TRIM_OPTIONS,
  unsureAllowed: true,
  likely: [
    [[], 0.6],
    [['brittle-clips'], 0.25],
    [['sticky'], 0.15],
  ],
  likelySource: 'own estimate',
  asked: (r) => service(r, 'cabin') && olderThan(r, 2005),
  reply: (r) => byWeight(r, trim, ['sticky', 'wood', 'brittle-clips']),
})
