import { danger } from '../conditions'
import { question } from '../question'

export const FILM_KIND_OPTIONS = ['clear-film', 'wrap', 'lettering', 'stickers'] as const
export type FilmKind = (typeof FILM_KIND_OPTIONS)[number]

export const filmKind = question<readonly FilmKind[]>({
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
})
