import { type Question, question } from '../question'
import { byOption } from '../reply'

export const BODY_OPTIONS = [
  'city-car',
  'hatchback',
  'saloon',
  'estate',
  'coupe',
  'convertible',
  'sports-car',
  'suv',
  'mpv',
  'pickup',
  'van',
  'motorcycle',
  'boat',
  'motorhome',
] as const
export type Body = (typeof BODY_OPTIONS)[number]

export const body: Question<Body> = question({
  id: 'body',
  topic: 'car',
  stage: 'first',
  kind: 'choice',
  options: BODY_OPTIONS,
  reply: (r) =>
    byOption(r, body, {
      'city-car': 'car',
      hatchback: 'car',
      saloon: 'car',
      estate: 'car',
      coupe: 'car',
      'sports-car': 'car',
      suv: 'big',
      mpv: 'big',
      pickup: 'big',
      van: 'big',
      motorhome: 'big',
    }),
})
