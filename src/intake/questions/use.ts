import { crowded, danger, history } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const USE_OPTIONS = [
  'daily-outdoors',
  'daily-garaged',
  'weekend',
  'stored',
  'show',
  'track',
  'work',
] as const
export type Use = (typeof USE_OPTIONS)[number]

export const use: Question<Use> = question({
  id: 'use',
  topic: 'use',
  stage: 'first',
  kind: 'choice',
  options: USE_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['daily-outdoors', 0.5],
    ['daily-garaged', 0.2],
    ['weekend', 0.15],
    ['stored', 0.05],
    ['work', 0.08],
    ['track', 0.02],
  ],
  likelySource: 'own estimate',
  asked: (r) => history(r) && !crowded(r, 3) && !danger(r, 'not-driving'),
  reply: (r) => byOption(r, use, { 'daily-garaged': 'kept', weekend: 'kept' }),
})
