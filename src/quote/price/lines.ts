import { allocate, sumOf } from '../../kernel/money'
import { roundProduct } from '../../kernel/rounding'

/** A line before it has an amount. */
export type DraftLine = {
  readonly id: string
  /** Expected cost in minor units (may be fractional): the weight of the line. */
  readonly expected: number
  /** Offered by time: the most it can come to before the studio has to ask. */
  readonly cap?: number
}

export type PricedLine = { readonly id: string; readonly amount: number }

/** Most a by-time line can come to, in whole minor units, rounded up. */
export const byTimeCap = (ratePerHour: number, capMinutes: number): number =>
  Math.ceil((ratePerHour * capMinutes) / 60 - 1e-6)

const weightOf = (d: DraftLine): number => Math.max(1, Math.round(d.expected))

/**
 * Gives every line one whole amount, by expected cost. A line by time never carries more than its cap;
 * what it cannot carry goes to the fixed ones. The lines sum to the net exactly as long as one line
 * is fixed; with none they sum to the net or to their caps, whichever is less.
 */
export const shareLines = (net: number, drafts: readonly DraftLine[]): readonly PricedLine[] => {
  if (drafts.length === 0) return []
  const first = allocate(net, drafts.map(weightOf))
  const taken = drafts.map((d, i) => Math.min(first[i]!, d.cap ?? first[i]!))
  const fixed = drafts.filter((d) => d.cap === undefined)
  const left = net - sumOf(taken)
  const rest = left === 0 || fixed.length === 0 ? [] : allocate(left, fixed.map(weightOf))
  let next = 0
  return drafts.map(({ id, cap }, i) => ({
    id,
    amount: taken[i]! + (cap === undefined ? (rest[next++] ?? 0) : 0),
  }))
}

/** What a by-time line finally costs: its time at the rate of its cap, never above the cap; half up. */
export const byTimeFinal = (
  cap: { readonly capMinutes: number; readonly capAmount: number },
  minutes: number,
): number =>
  minutes >= cap.capMinutes
    ? cap.capAmount
    : roundProduct(cap.capAmount, Math.max(0, Math.round(minutes)), cap.capMinutes, 'half-up')

/** Takes a discount off the lines in proportion to their amounts; no line goes below zero, no unit is lost. */
export const discountLines = (
  lines: readonly PricedLine[],
  discount: number,
): readonly PricedLine[] => {
  const amounts = lines.map((l) => l.amount)
  if (!(discount >= 0 && discount <= sumOf(amounts))) {
    throw new RangeError('a discount lies between nothing and the whole')
  }
  if (lines.length === 0) return []
  const cuts = allocate(discount, amounts)
  return lines.map((line, i) => ({ ...line, amount: line.amount - cuts[i]! }))
}
