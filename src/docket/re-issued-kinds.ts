import * as z from 'zod'
import { AFTER_NO } from '../jobsheet/polish-word'
import { POLISH_LEVELS } from '../quote/context'
import { id, maybe, minor, text } from './line-shapes'
import { share } from './offer-shape'

/** Measuring shrank the result: what was promised and what can be had, asked before polishing. */
export const reIssued = z.strictObject({
  issue: id,
  revision: z.int().min(1),
  panels: z
    .array(
      z.strictObject({ panel: id, promised: z.enum(POLISH_LEVELS), now: z.enum(POLISH_LEVELS) }),
    )
    .max(40),
  /** Share of the visible marks that goes, as agreed and as expected now; null: none is promised. */
  promised: share.nullable(),
  now: share.nullable(),
  /** The whole price from now on; absent: as agreed. */
  price: maybe(z.strictObject({ net: minor, tax: minor, total: minor })),
  text: maybe(text),
})

/** The customer's word on it, once. */
export const reIssueDecided = z.strictObject({
  issue: id,
  decision: z.enum(['go-on', 'no']),
  /** With a no: what is done instead. */
  instead: maybe(z.enum(AFTER_NO)),
  name: text,
  how: z.enum(['link', 'phone']),
})
