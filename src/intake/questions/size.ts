import { type Question, question } from '../question'
import { byOption } from '../reply'
import { body } from './body'

export const SIZE_OPTIONS = ['small', 'mid', 'large'] as const
export type Size = (typeof SIZE_OPTIONS)[number]

export const size: Question<Size> = question({
  id: 'size',
  topic: 'car',
  stage: 'first',
  kind: 'choice',
  options: SIZE_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['small', 0.2],
    ['mid', 0.55],
    ['large', 0.25],
  ],
  likelySource: 'own estimate',
  asked: (r) =>
    (
      [
        'hatchback',
        'saloon',
        'estate',
        'suv',
        'mpv',
        'pickup',
        'van',
        'boat',
        'motorhome',
      ] as readonly (string | undefined)[]
    ).includes(r.value(body)),
  reply: (r) => byOption(r, size),
})
