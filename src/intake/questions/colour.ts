import { wantsPaint } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const COLOUR_OPTIONS = [
  'black',
  'dark',
  'mid',
  'light',
  'white',
  'red-orange-yellow',
] as const
export type Colour = (typeof COLOUR_OPTIONS)[number]

export const colour: Question<Colour> = question({
  id: 'colour',
  topic: 'paint',
  stage: 'first',
  kind: 'choice',
  options: COLOUR_OPTIONS,
  asked: (r) => wantsPaint(r),
  reply: (r) => byOption(r, colour, { black: 'dark', white: 'light' }),
})
