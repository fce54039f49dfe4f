import { has } from '../facts/has'
import { type Question, question } from '../question'
import { byWeight } from '../reply'
import { filmState } from './film-state'

export const FILM_STARTED_WITH_OPTIONS = ['hand', 'heat', 'blade', 'solvent'] as const
export type FilmStartedWith = (typeof FILM_STARTED_WITH_OPTIONS)[number]

export const filmStartedWith: Question<readonly FilmStartedWith[]> = question({
  id: 'film-started-with',
  topic: 'film',
  stage: 'narrow',
  kind: 'multi',
  options: FILM_STARTED_WITH_OPTIONS,
  unsureAllowed: true,
  likely: [
    [['hand'], 0.55],
    [['heat', 'hand'], 0.25],
    [['blade'], 0.12],
    [['solvent'], 0.08],
  ],
  likelySource: 'own estimate',
  asked: (r) => has(r, filmState, 'started'),
  reply: (r) => byWeight(r, filmStartedWith, ['blade', 'solvent', 'heat', 'hand']),
})
