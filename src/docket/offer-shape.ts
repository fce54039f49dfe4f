import * as z from 'zod'
import { TREATMENTS } from '../quote/options/treatment'
import { adjustment } from './adjustment'
import { maybe, minor, minutes, text, words } from './line-shapes'

export const quoteLine = z.strictObject({
  step: words,
  name: maybe(z.string().max(200)),
  amount: minor,
  minutes,
  byTime: maybe(z.strictObject({ capMinutes: minutes, capAmount: minor })),
})
export type QuoteLine = z.infer<typeof quoteLine>

export const offer = z.strictObject({
  lines: z.array(quoteLine).max(400),
  net: minor,
  tax: minor,
  total: minor,
  low: minor,
  high: minor,
  chanceEnough: z.number().min(0).max(1),
  deposit: minor,
  currency: z.string().length(3),
})
export type Offer = z.infer<typeof offer>

/** How long the work takes, and by how many people on how many days. */
export const measures = {
  minutes: z.strictObject({ low: minutes, likely: minutes, high: minutes }),
  ready: z.strictObject({ people: z.int(), days: z.int() }),
} as const

/** A share of the visible marks, from 0 to 1. */
export const share = z.strictObject({
  low: z.number().min(0).max(1),
  high: z.number().min(0).max(1),
})

/** One of the ways a quote offers, with figures of its own from the same engine. */
export const quoteOption = z.strictObject({
  option: z.enum(['a', 'b', 'c']),
  treatment: z.enum(TREATMENTS),
  /** The panels it is about; absent: the whole car. */
  panels: maybe(z.array(words).min(1).max(40)),
  /** What the studio says of it. */
  text: maybe(text),
  digest: words,
  adjustments: z.array(adjustment).max(200),
  offer,
  ...measures,
  /** Share of the visible marks that goes; absent: none is promised. */
  removed: maybe(share),
})
export type QuoteOption = z.infer<typeof quoteOption>
