import { question } from '../question'

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

export const services = question<readonly Services[]>({
  id: 'services',
  topic: 'wish',
  stage: 'first',
  kind: 'multi',
  options: SERVICES_OPTIONS,
})
