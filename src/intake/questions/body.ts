import { question } from '../question'

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

export const body = question<Body>({
  id: 'body',
  topic: 'car',
  stage: 'first',
  kind: 'choice',
  options: BODY_OPTIONS,
})
