import { crowded, danger, history, wantsPaint } from '../conditions'
import { type Question, question } from '../question'
import type { Reader } from '../reader'
import { byOption } from '../reply'
import { type Services, services } from './services'

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

const PAINT: readonly Services[] = ['paint', 'protect', 'headlights', 'underside']

/** No other work asked a question of its own, so there is room for this one. */
const onlyPaint = (r: Reader): boolean =>
  r.value(services)?.every((s) => PAINT.includes(s)) === true

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
  asked: (r) =>
    (history(r) || !wantsPaint(r) || onlyPaint(r)) && !crowded(r, 3) && !danger(r, 'not-driving'),
  reply: (r) => byOption(r, use, { 'daily-garaged': 'kept', weekend: 'kept' }),
})
