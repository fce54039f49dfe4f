import { danger } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const FILM_STATE_OPTIONS = ['pliable', 'dull', 'cracked', 'started'] as const
export type FilmState = (typeof FILM_STATE_OPTIONS)[number]

export const filmState: Question<readonly FilmState[]> = question({
  id: 'film-state',
  topic: 'film',
  stage: 'first',
  kind: 'multi',
  options: FILM_STATE_OPTIONS,
  unsureAllowed: true,
  likely: [
    [['pliable'], 0.35],
    [['dull'], 0.35],
    [['dull', 'cracked'], 0.25],
    [['cracked', 'started'], 0.05],
  ],
  likelySource: 'own estimate',
  carSd: 0.05,
  asked: (r) => danger(r, 'film'),
  reply: (r) => byWeight(r, filmState, ['started', 'cracked', 'dull', 'pliable']),
})
