import { allocate, sumOf } from '../../kernel/money'

/** A line before it has an amount. By time: offered at an hourly rate up to a cap, not part of the fixed net. */
export type DraftLine = {
  readonly id: string
  /** Expected cost in minor units (may be fractional); the weight of a fixed line. */
  readonly expected: number
  readonly byTime?: { readonly ratePerHour: number; readonly capMinutes: number }
}

export type OfferLine = {
  readonly id: string
  readonly kind: 'fixed' | 'by-time'
  /** Whole minor units; for a by-time line the most it can come to before the studio has to ask. */
  readonly amount: number
}

/** Most a by-time line can come to, in whole minor units, rounded up. */
export const byTimeCap = (ratePerHour: number, capMinutes: number): number =>
  Math.ceil((ratePerHour * capMinutes) / 60 - 1e-6)

/**
 * Gives every line one whole amount so that they sum to the net exactly. By-time lines take their cap
 * (their expected cost no longer counts as a weight); the rest of the net is shared by expected cost.
 * Throws when nothing but by-time lines is left for a rest, or the caps pass the net.
 */
export const linesFor = (net: number, drafts: readonly DraftLine[]): OfferLine[] => {
  const caps = drafts.map((d) =>
    d.byTime === undefined ? 0 : byTimeCap(d.byTime.ratePerHour, d.byTime.capMinutes),
  )
  const rest = net - sumOf(caps)
  if (rest < 0) throw new RangeError('the caps of by-time lines pass the net')
  const fixed = drafts.filter((d) => d.byTime === undefined)
  if (fixed.length === 0 && rest > 0) throw new RangeError('no fixed line takes the rest')
  const weights = fixed.map((d) => d.expected)
  const shares = fixed.length === 0 ? [] : allocate(rest, weights)
  let next = 0
  return drafts.map(({ id, byTime }, i) =>
    byTime === undefined
      ? { id, kind: 'fixed', amount: shares[next++]! }
      : { id, kind: 'by-time', amount: caps[i]! },
  )
}

/** What a by-time line finally costs: the time at the rate, never above the cap. Whole minor units, half up. */
export const byTimeFinal = (ratePerHour: number, minutes: number, capMinutes: number): number =>
  Math.min(
    byTimeCap(ratePerHour, capMinutes),
    Math.floor((ratePerHour * Math.min(minutes, capMinutes)) / 60 + 0.5),
  )

/** Takes a discount off the lines in proportion to their amounts; no line goes below zero, no unit is lost. */
export const discountLines = (lines: readonly OfferLine[], discount: number): OfferLine[] => {
  const amounts = lines.map((l) => l.amount)
  if (!(discount >= 0 && discount <= sumOf(amounts))) {
    throw new RangeError('a discount lies between nothing and the whole')
  }
  if (lines.length === 0) return []
  const cuts = allocate(discount, amounts)
  return lines.map((line, i) => ({ ...line, amount: line.amount - cuts[i]! }))
}
