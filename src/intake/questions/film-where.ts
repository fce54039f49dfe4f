import { danger, service } from '../conditions'
import { question } from '../question'

export const FILM_WHERE_OPTIONS = [
  'front-bumper',
  'bonnet-edge',
  'bonnet',
  'wings',
  'doors',
  'sills',
  'roof',
  'rear',
  'whole-car',
  'glass',
] as const
export type FilmWhere = (typeof FILM_WHERE_OPTIONS)[number]

export const filmWhere = question<readonly FilmWhere[]>({
  id: 'film-where',
  topic: 'film',
  stage: 'first',
  kind: 'multi',
  options: FILM_WHERE_OPTIONS,
  unsureAllowed: true,
  likely: [
    [['front-bumper', 'bonnet-edge'], 0.35],
    [['front-bumper', 'bonnet', 'wings'], 0.3],
    [['doors'], 0.15],
    [['rear'], 0.1],
    [['whole-car'], 0.1],
  ],
  likelySource: 'own estimate',
  asked: (r) => danger(r, 'film') || service(r, 'stickers'),
})
