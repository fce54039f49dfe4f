import { danger } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const FILM_KIND_OPTIONS = ['clear-film', 'wrap', 'lettering', 'stickers'] as const
export type FilmKind = (typeof FILM_KIND_OPTIONS)[number]

export const filmKind: Question<readonly FilmKind[]> = question({
  id: 'film-kind',
  topic: 'film',
  stage: 'first',
  kind: 'multi',
  options: FILM_KIND_OPTIONS,
  unsureAllowed: true,
  likely: [
    [['clear-film'], 0.5],
    [['wrap'], 0.2],
    [['lettering'], 0.15],
    [['stickers'], 0.15],
  ],
  likelySource: 'own estimate',
  asked: (r) => danger(r, 'film'),
  reply: (r) => byWeight(r, filmKind, ['clear-film', 'wrap', 'lettering', 'stickers']),
})
