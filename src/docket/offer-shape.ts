import * as z from 'zod'
import { maybe, minor, minutes, words } from './line-shapes'

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
