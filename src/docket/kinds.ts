import type * as z from 'zod'
import { benchKinds } from './bench-kinds'
import { officeKinds } from './office-kinds'

export { type Adjustment, adjustment } from './adjustment'
export { GOES_BEFORE, HEARD, LOCKING_KEYS, PROBES, RECORDED } from './bench-kinds'
export {
  type Offer,
  offer,
  type QuoteLine,
  type QuoteOption,
  quoteLine,
} from './offer-shape'
export { UNANSWERED } from './office-kinds'

export const MARKS = ['customer', 'owner', 'bench', 'system'] as const

/** Every kind of line with the shape of its body; the version is 1 until a shape changes. */
export const kinds = { ...officeKinds, ...benchKinds } as const
export type LineKind = keyof typeof kinds
export type BodyOf<K extends LineKind> = z.infer<(typeof kinds)[K]>

/** Kinds a bench device may write without a signal; they fold the same in any order of arrival. */
export const BENCH_KINDS = Object.keys(benchKinds) as readonly (keyof typeof benchKinds)[]

export const isBenchKind = (kind: string): boolean => Object.hasOwn(benchKinds, kind)
