import * as z from 'zod'
import { day } from './line-shapes'

const maybe = z.exactOptional
const minor = z.int()
const minutes = z.int().min(0).max(100_000)
const words = z.string().min(1).max(64)
const why = z.string().min(1).max(500)

/** A change the studio made to an estimate, as a line keeps it; the engine's shape of the same name. */
export const adjustment = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('minutes'), step: words, minutes, why: why }),
  z.strictObject({
    kind: z.literal('price'),
    step: words,
    amount: minor.min(0),
    why: why,
  }),
  z.strictObject({ kind: z.literal('remove'), step: words, why: why }),
  z.strictObject({
    kind: z.literal('add'),
    step: words,
    name: z.string().min(1).max(200),
    minutes,
    amount: maybe(minor.min(0)),
    why: why,
  }),
  z.strictObject({ kind: z.literal('discount'), amount: minor.min(0), why: why }),
  z.strictObject({
    kind: z.literal('discount-share'),
    basisPoints: z.int().min(0).max(10_000),
    why: why,
  }),
  z.strictObject({ kind: z.literal('surcharge'), amount: minor.min(0), why: why }),
  z.strictObject({ kind: z.literal('travel'), metres: z.int().min(0).max(2_000_000), why: why }),
  z.strictObject({ kind: z.literal('bay-days'), days: z.int().min(0).max(365), why: why }),
  z.strictObject({
    kind: z.literal('sublet'),
    step: words,
    name: z.string().min(1).max(200),
    cost: minor.min(0),
    marginMillionths: maybe(z.int().min(0).max(5_000_000)),
    why: why,
  }),
  z.strictObject({ kind: z.literal('by-time'), step: words, capMinutes: minutes.min(1), why: why }),
  z.strictObject({ kind: z.literal('people'), people: z.int().min(1).max(6), why: why }),
  z.strictObject({ kind: z.literal('waive-note'), note: words, why: why }),
  z.strictObject({
    kind: z.literal('level'),
    panel: maybe(words),
    level: z.enum(['none', 'hand', 'finishing', 'light', 'two-step']),
    why: why,
  }),
  z.strictObject({ kind: z.literal('start'), day, why: why }),
])
export type Adjustment = z.infer<typeof adjustment>
