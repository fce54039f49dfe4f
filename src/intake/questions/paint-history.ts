import { danger, wantsPaint } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const PAINT_HISTORY_OPTIONS = ['original', 'part', 'all'] as const
export type PaintHistory = (typeof PAINT_HISTORY_OPTIONS)[number]

export const paintHistory: Question<PaintHistory> = question({
  id: 'paint-history',
  topic: 'paint',
  stage: 'first',
  kind: 'choice',
  options: PAINT_HISTORY_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['original', 0.6],
    ['part', 0.32],
    ['all', 0.08],
  ],
  likelySource: 'own estimate',
  carSd: 0.06,
  asked: (r) =>
    wantsPaint(r) ||
    danger(r, 'fresh-paint') ||
    danger(r, 'film') ||
    danger(r, 'peeling') ||
    danger(r, 'matte'),
  reply: (r) => byOption(r, paintHistory),
})
