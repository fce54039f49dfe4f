import { danger } from '../conditions'
import { question } from '../question'
import { authority } from './authority'

export const PAYER_OPTIONS = ['me', 'insurer', 'other'] as const
export type Payer = (typeof PAYER_OPTIONS)[number]

export const payer = question<Payer>({
  id: 'payer',
  topic: 'send',
  stage: 'narrow',
  kind: 'choice',
  options: PAYER_OPTIONS,
  asked: (r) =>
    danger(r, 'wet') ||
    danger(r, 'fresh-paint') ||
    (r.value(authority) !== undefined && r.value(authority) !== 'mine'),
})
