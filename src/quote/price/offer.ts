import { allocate, rateOf, sumOf, type TaxBasis, taxOn } from '../../kernel/money'
import { type RoundingMode, roundToStep } from '../../kernel/rounding'

/** What the offer needs of a price distribution (minor units, net, the minimum charge included). */
export type SpreadPrice = {
  readonly mean: number
  readonly quantile: (p: number) => number
  readonly chanceAtMost: (amount: number) => number
}

export type OfferRules = {
  readonly spreadPrice: SpreadPrice
  /** The studio's percentile, 0..1; common practice 0.70–0.75, because tails lean to the right. */
  readonly percentile: number
  readonly taxRateMillionths: number
  readonly taxRounding: RoundingMode
  readonly taxBasis: TaxBasis
  /** The net is raised to a multiple of this many minor units (1: none). */
  readonly step: number
}

export type Offer = {
  readonly net: number
  readonly tax: number
  readonly gross: number
  /** Chance that the work costs no more than the net. */
  readonly chanceEnough: number
}

/** Rounds real minor units up to a whole multiple of step; a hair above a multiple (1e-6) does not count. */
export const upToStep = (amount: number, step: number): number =>
  roundToStep(Math.ceil(amount - 1e-6), step, 'ceiling')

/** Rounds real minor units down to a whole multiple of step, with the same tolerance. */
export const downToStep = (amount: number, step: number): number =>
  roundToStep(Math.floor(amount + 1e-6), step, 'floor')

/**
 * The offered net price: the studio's percentile, never below the mean, up to the studio's step.
 * Tax by line is the tax on the given line nets once they are known; without lines the net is one line.
 */
export const offerFrom = (rules: OfferRules, lineWeights: readonly number[] = []): Offer => {
  const { spreadPrice, percentile, step } = rules
  if (!(percentile >= 0.5 && percentile < 1)) throw new RangeError('percentile outside 0.5..1')
  const net = upToStep(Math.max(spreadPrice.mean, spreadPrice.quantile(percentile)), step)
  const lines = lineWeights.length === 0 ? [net] : allocate(net, lineWeights)
  const tax = taxOn(lines, rules.taxRateMillionths, rules.taxRounding, rules.taxBasis)
  return { net, tax, gross: net + tax, chanceEnough: spreadPrice.chanceAtMost(net) }
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
