import { danger, service } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

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

export const filmWhere: Question<readonly FilmWhere[]> = question({
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
  reply: (r) => byWeight(r, filmWhere, ['whole-car', 'front-bumper', 'glass']),
})
