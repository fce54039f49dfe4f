import { danger } from '../conditions'
import { question } from '../question'

export const FILM_OVER_OPTIONS = ['factory', 'repaint', 'bumper'] as const
export type FilmOver = (typeof FILM_OVER_OPTIONS)[number]

export const filmOver = question<FilmOver>({
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
})
