import { danger } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const FILM_OVER_OPTIONS = ['factory', 'repaint', 'bumper'] as const
export type FilmOver = (typeof FILM_OVER_OPTIONS)[number]

export const filmOver: Question<FilmOver> = question({
  id: 'film-over',
  topic: 'film',
  stage: 'narrow',
  kind: 'choice',
  options: FILM_OVER_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['factory', 0.6],
    ['bumper', 0.25],
    ['repaint', 0.15],
  ],
  likelySource: 'own estimate',
  asked: (r) => danger(r, 'film'),
  reply: (r) => byOption(r, filmOver),
})
