import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const SERVICES_OPTIONS = [
  'paint',
  'protect',
  'cabin',
  'wheels-off',
  'underside',
  'engine-bay',
  'headlights',
  'glass',
  'roof',
  'stickers',
] as const
export type Services = (typeof SERVICES_OPTIONS)[number]

export const services: Question<readonly Services[]> = question({
  id: 'services',
  topic: 'wish',
  stage: 'first',
  kind: 'multi',
  options: SERVICES_OPTIONS,
  reply: (r) =>
    byWeight(r, services, ['paint', 'protect', 'wheels-off', 'cabin', 'stickers', 'roof']),
})
