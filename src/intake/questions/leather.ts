import { history, service } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const LEATHER_OPTIONS = [
  'smooth',
  'perforated',
  'suede',
  'cracked',
  'dyed',
  'cloth-only',
] as const
export type Leather = (typeof LEATHER_OPTIONS)[number]

export const leather: Question<readonly Leather[]> = question({
  id: 'leather',
  topic: 'cabin',
  stage: 'narrow',
  kind: 'multi',
  options: LEATHER_OPTIONS,
  alone: ['cloth-only'],
  unsureAllowed: true,
  likely: [
    [['cloth-only'], 0.5],
    [['smooth'], 0.25],
    [['smooth', 'perforated'], 0.1],
    [['smooth', 'cracked'], 0.1],
    [['suede'], 0.05],
  ],
  likelySource: 'own estimate',
  asked: (r) => service(r, 'cabin') && history(r),
  reply: (r) =>
    byWeight(r, leather, ['suede', 'dyed', 'cracked', 'perforated', 'smooth', 'cloth-only'], {
      dyed: 'cracked',
    }),
})
