import * as z from 'zod'
import { SUPPLY, WANTED } from '../jobsheet/supply'
import { day } from './line-shapes'

const maybe = z.exactOptional
const item = z.string().min(1).max(64)

/**
 * Something to have in hand before the car comes: one of the studio's own (with `what` and `thing`),
 * or another day to order one that follows from the steps, by its item.
 */
export const wanted = z.strictObject({
  item,
  what: maybe(z.enum(WANTED)),
  thing: maybe(z.string().min(1).max(120)),
  orderBy: maybe(day),
})

/** How far a wanted thing is. */
export const supplied = z.strictObject({
  item,
  state: z.enum(SUPPLY),
  /** One of the studio's own is named again, so that the line can be read by itself. */
  thing: maybe(z.string().min(1).max(120)),
  expected: maybe(day),
})
