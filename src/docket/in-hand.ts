import * as z from 'zod'
import { SUPPLY, WANTED } from '../jobsheet/in-hand'
import type { Line } from './line'
import { day, maybe } from './line-shapes'

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

export type InHand = {
  readonly wanted: Readonly<
    Record<string, z.infer<typeof wanted> & { readonly line: string; readonly by: string }>
  >
  readonly supply: Readonly<
    Record<string, z.infer<typeof supplied> & { readonly at: number; readonly by: string }>
  >
}

/** Folds bench lines already in their fixed order; the last word on an item counts. */
export const foldInHand = (lines: readonly Line[]): InHand => {
  const held: Record<string, InHand['wanted'][string]> = {}
  const supply: Record<string, InHand['supply'][string]> = {}
  for (const line of lines) {
    if (line.kind === 'wanted') {
      const body = line.body as z.infer<typeof wanted>
      held[body.item] = { ...held[body.item], ...body, line: line.id, by: line.by }
    }
    if (line.kind === 'supplied') {
      const body = line.body as z.infer<typeof supplied>
      supply[body.item] = { ...body, at: line.at, by: line.by }
    }
  }
  return { wanted: held, supply }
}
