import { rateOf, sumOf } from '../../kernel/money'
import { type RoundingMode, roundToStep } from '../../kernel/rounding'

/** What the offer needs of a price distribution (minor units, net, the minimum charge included). */
export type SpreadPrice = {
  readonly mean: number
  readonly quantile: (p: number) => number
}

/** Rounds real minor units up to a whole multiple of step; a hair above a multiple (1e-6) does not count. */
export const upToStep = (amount: number, step: number): number =>
  roundToStep(Math.ceil(amount - 1e-6), step, 'ceiling')

/** Rounds real minor units down to a whole multiple of step, with the same tolerance. */
export const downToStep = (amount: number, step: number): number =>
  roundToStep(Math.floor(amount + 1e-6), step, 'floor')

/**
 * The offered net price in whole minor units: the studio's percentile (common practice 0.70 to 0.75,
 * because tails lean to the right), never below the mean. Throws on a percentile outside 0.5..1.
 */
export const offerNet = (price: SpreadPrice, percentile: number): number => {
  if (!(percentile >= 0.5 && percentile < 1)) throw new RangeError('percentile outside 0.5..1')
  return upToStep(Math.max(price.mean, price.quantile(percentile)), 1)
}

export type Range = { readonly low: number; readonly likely: number; readonly high: number }

/** Low down and high up to a multiple of step, likely to the nearest: what is shown never promises more than is known. */
export const outwardRange = (range: Range, step: number): Range => ({
  low: downToStep(range.low, step),
  likely: roundToStep(Math.round(range.likely), step, 'half-up'),
  high: upToStep(range.high, step),
})

/** A range of net amounts as gross ones: low tax cut, high tax raised, before any rounding to a step. */
export const grossRange = (range: Range, taxRateMillionths: number): Range => {
  const withTax = (net: number, mode: RoundingMode) => net + rateOf(net, taxRateMillionths, mode)
  return {
    low: withTax(downToStep(range.low, 1), 'down'),
    likely: withTax(Math.round(range.likely), 'half-up'),
    high: withTax(upToStep(range.high, 1), 'up'),
  }
}

export type OptionOffer = { readonly id: string; readonly net: number; readonly gross: number }
export type OptionDifference = OptionOffer & {
  readonly netDifference: number
  readonly grossDifference: number
}

/** Options beside a base offer: each whole, with what it adds or takes away. */
export const optionDifferences = (
  base: { readonly net: number; readonly gross: number },
  options: readonly OptionOffer[],
): OptionDifference[] =>
  options.map((o) => ({
    ...o,
    netDifference: sumOf([o.net, -base.net]),
    grossDifference: sumOf([o.gross, -base.gross]),
  }))
