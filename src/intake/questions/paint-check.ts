import { danger } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'
import { clothTest } from './cloth-test'
import { filmOver } from './film-over'
import { paintHistory } from './paint-history'

export const PAINT_CHECK_OPTIONS = ['painted-again', 'never-painted'] as const
export type PaintCheck = (typeof PAINT_CHECK_OPTIONS)[number]

export const paintCheck: Question<PaintCheck> = question({
  id: 'paint-check',
  topic: 'paint',
  stage: 'narrow',
  kind: 'choice',
  options: PAINT_CHECK_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['painted-again', 0.8],
    ['never-painted', 0.2],
  ],
  likelySource: 'own estimate',
  check: true,
  asked: (r) =>
    r.value(paintHistory) === 'original' &&
    (danger(r, 'fresh-paint') || r.value(clothTest) === 'part' || r.value(filmOver) === 'repaint'),
  reply: (r) => byOption(r, paintCheck),
})
