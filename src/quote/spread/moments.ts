import { carVariance, type SpreadInput } from './spread-input'
import { type Sums, sumsOf } from './sums'

export type Moments = {
  /** Person-minutes. */
  readonly labour: { readonly mean: number; readonly variance: number }
  /** Minor units, before the minimum charge. */
  readonly price: { readonly mean: number; readonly variance: number }
}

/** Moments from the sums; the car factor F is independent of them, with E F = 1 and E F² = exp(log-variance). */
export const momentsFrom = (sums: Sums, input: SpreadInput): Moments => {
  const square = Math.exp(carVariance(input))
  const scaled = (variance: number, mean: number) => square * (variance + mean * mean) - mean * mean
  return {
    labour: { mean: sums.minutes, variance: scaled(sums.varMinutes, sums.minutes) },
    price: {
      mean: input.fixedMoney + sums.worth + sums.money,
      variance: scaled(sums.varWorth, sums.worth) + sums.varMoney + 2 * sums.covWorthMoney,
    },
  }
}

/** Closed-form mean and variance of labour and price, exact when items share unknowns. */
export const moments = (input: SpreadInput): Moments => momentsFrom(sumsOf(input), input)
