import { olderThan, service } from '../conditions'
import { has } from '../facts/has'
import { type Question, question } from '../question'
import { byOption } from '../reply'
import { cabinMarks } from './cabin-marks'
import { growth } from './growth'

export const HEADLINER_OPTIONS = ['firm', 'loose'] as const
export type Headliner = (typeof HEADLINER_OPTIONS)[number]

export const headliner: Question<Headliner> = question({
  id: 'headliner',
  topic: 'cabin',
  stage: 'narrow',
  kind: 'choice',
  options: HEADLINER_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['firm', 0.85],
    ['loose', 0.15],
  ],
  likelySource: 'own estimate',
  asked: (r) =>
    service(r, 'cabin') &&
    (olderThan(r, 2005) || has(r, cabinMarks, 'smoke') || has(r, growth, 'mould-headliner')),
  reply: (r) => byOption(r, headliner),
})
