import { history, olderThan, wantsPaint } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'
import { authority } from './authority'

export const TERMS_OPTIONS = ['return-terms', 'paint-warranty'] as const
export type Terms = (typeof TERMS_OPTIONS)[number]

/** Cars this young may still have a warranty on paint or rust (common practice, no source). */
const WARRANTY_FROM = 2016

export const terms: Question<readonly Terms[]> = question({
  id: 'terms',
  topic: 'send',
  stage: 'narrow',
  kind: 'multi',
  options: TERMS_OPTIONS,
  unsureAllowed: true,
  likely: [
    [[], 0.6],
    [['paint-warranty'], 0.3],
    [['return-terms'], 0.1],
  ],
  likelySource: 'own estimate',
  asked: (r) =>
    r.value(authority) === 'lease-finance' ||
    (wantsPaint(r) && history(r) && !olderThan(r, WARRANTY_FROM)),
  reply: (r) => byWeight(r, terms, TERMS_OPTIONS),
})
