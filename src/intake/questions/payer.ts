import { danger } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'
import { authority } from './authority'

export const PAYER_OPTIONS = ['me', 'insurer', 'other'] as const
export type Payer = (typeof PAYER_OPTIONS)[number]

export const payer: Question<Payer> = question({
  id: 'payer',
  topic: 'send',
  stage: 'narrow',
  kind: 'choice',
  options: PAYER_OPTIONS,
  asked: (r) =>
    danger(r, 'wet') ||
    danger(r, 'fresh-paint') ||
    (r.value(authority) !== undefined && r.value(authority) !== 'mine'),
  reply: (r) => byOption(r, payer),
})
