import { danger } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'
import { whereCar } from './where-car'

export const BRING_HOW_OPTIONS = ['trailer', 'need-transport', 'drive-it'] as const
export type BringHow = (typeof BRING_HOW_OPTIONS)[number]

export const bringHow: Question<BringHow> = question({
  id: 'bring-how',
  topic: 'send',
  stage: 'narrow',
  kind: 'choice',
  options: BRING_HOW_OPTIONS,
  check: true,
  asked: (r) => danger(r, 'not-driving') && r.value(whereCar) === 'bring',
  reply: (r) => byOption(r, bringHow),
})
