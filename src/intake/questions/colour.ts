import { wantsPaint } from '../conditions'
import { question } from '../question'

export const COLOUR_OPTIONS = [
  'black',
  'dark',
  'mid',
  'light',
  'white',
  'red-orange-yellow',
] as const
export type Colour = (typeof COLOUR_OPTIONS)[number]

export const colour = question<Colour>({
  id: 'colour',
  topic: 'paint',
  stage: 'first',
  kind: 'choice',
  options: COLOUR_OPTIONS,
  asked: (r) => wantsPaint(r),
})
