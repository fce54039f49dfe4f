import type * as z from 'zod'
import { benchKinds } from './bench-kinds'
import { officeKinds } from './office-kinds'

export { type Adjustment, adjustment } from './adjustment'
export {
  BENCH_KINDS,
  isBenchKind,
  PROBES,
} from './kind-names'
export {
  type Offer,
  offer,
  type QuoteLine,
  type QuoteOption,
} from './offer-shape'
export { DOUBTS, type Doubt, UNANSWERED } from './office-kinds'

export const MARKS = ['customer', 'owner', 'bench', 'system'] as const

/** Every kind of line with the shape of its body; the version is 1 until a shape changes. */
export const kinds = { ...officeKinds, ...benchKinds } as const
export type LineKind = keyof typeof kinds
export type BodyOf<K extends LineKind> = z.infer<(typeof kinds)[K]>
