import { normalQuantile } from '../../kernel/statistics'
import { momentsFrom } from './moments'
import { sampleOf } from './sample'
import { carVariance, type SpreadInput } from './spread-input'
import { orderOf } from './strata'
import { sumsOf } from './sums'
import { type Tally, tallyOf } from './tally'

export type Spread = {
  /** Person-minutes. */
  readonly labour: {
    readonly p10: number
    readonly p50: number
    readonly p80: number
    readonly p90: number
    readonly mean: number
    readonly sd: number
  }
  /** Net price in minor units (not rounded), never below the minimum. */
  readonly price: {
    readonly p10: number
    readonly p50: number
    readonly p90: number
    readonly mean: number
    readonly sd: number
  }
  readonly labourQuantile: (p: number) => number
  readonly priceQuantile: (p: number) => number
  readonly chanceLabourAtMost: (minutes: number) => number
  readonly chancePriceAtMost: (amount: number) => number
}

const DEFAULT_POINTS = 2048
/** Values of the car factor tried at each point: far apart at one point, and evenly spread over all. */
const FACTORS = 8
const LEVELS = 512

let normalLevels: Float64Array | undefined

/** Standard normal quantiles at the middle of LEVELS equal-probability strata. */
const computeNormalLevels = (): Float64Array => {
  const out = new Float64Array(LEVELS)
  for (let i = 0; i < LEVELS / 2; i++) {
    const z = normalQuantile((i + 0.5) / LEVELS)
    out[i] = z
    out[LEVELS - 1 - i] = -z
  }
  return out
}

/** The car factor at the middle of the same strata; mean 1. */
const factorLevels = (logVariance: number): Float64Array => {
  normalLevels ??= computeNormalLevels()
  const sd = Math.sqrt(logVariance)
  return normalLevels.map((z) => Math.exp(sd * z - logVariance / 2))
}

let room = { labour: new Float64Array(0), price: new Float64Array(0) }

/**
 * Labour and price, each point of the sample met by FACTORS values of the car factor. The room they
 * stand in is used again by the next call.
 */
const withFactor = (input: SpreadInput, sample: ReturnType<typeof sampleOf>, points: number) => {
  const levels = factorLevels(carVariance(input))
  const order = orderOf(points, 0)
  const size = points * FACTORS
  if (room.labour.length !== size)
    room = { labour: new Float64Array(size), price: new Float64Array(size) }
  const { labour, price } = room
  const minutes = new Float64Array(points)
  const worth = new Float64Array(points)
  for (const [rate, part] of sample.minutesByRate) {
    const perMinute = rate / 60
    for (let j = 0; j < points; j++) {
      minutes[j]! += part[j]!
      worth[j]! += part[j]! * perMinute
    }
  }
  const perLevel = LEVELS / (points * FACTORS)
  for (let r = 0; r < FACTORS; r++) {
    const start = r * points
    for (let j = 0; j < points; j++) {
      const factor = levels[((start + order[j]!) * perLevel) | 0]!
      labour[start + j] = minutes[j]! * factor
      price[start + j] = worth[j]! * factor + sample.money[j]!
    }
  }
  return { labour, price }
}

/** Mean and sd of max(minimum, price): the exact moments plus the sampled effect of the minimum alone. */
const raised = (price: Tally, minimum: number, mean: number, variance: number) => {
  const lift = price.shortfall(minimum)
  const up = mean + lift.mean
  return { mean: up, sd: Math.sqrt(Math.max(0, variance + mean * mean + lift.square - up * up)) }
}

/**
 * Labour and price of one car as distributions: PERT steps and chance events, shared unknown answers, one
 * lognormal car factor of mean 1. A fixed Latin hypercube, so equal inputs give equal output everywhere;
 * means and deviations are the closed forms (`sums` where they are known already). Throws on an ill-formed
 * input.
 */
export const spread = (input: SpreadInput, sums = sumsOf(input)): Spread => {
  const points = input.points ?? DEFAULT_POINTS
  if (
    !(
      points >= 256 &&
      points <= 16_384 &&
      Number.isInteger(points) &&
      (points & (points - 1)) === 0
    )
  ) {
    throw new RangeError('points must be a power of two from 256 to 16384')
  }
  const exact = momentsFrom(sums, input)
  const values = withFactor(input, sampleOf(input, sums.shapes, points), points)
  const labour = tallyOf(values.labour, exact.labour.mean, exact.labour.variance, 0)
  const price = tallyOf(values.price, exact.price.mean, exact.price.variance, input.fixedMoney)
  const minimum = input.minimumMoney
  const priceQuantile = (p: number) => Math.max(minimum, price.quantile(p))
  return {
    labour: {
      p10: labour.quantile(0.1),
      p50: labour.quantile(0.5),
      p80: labour.quantile(0.8),
      p90: labour.quantile(0.9),
      mean: exact.labour.mean,
      sd: Math.sqrt(exact.labour.variance),
    },
    price: {
      p10: priceQuantile(0.1),
      p50: priceQuantile(0.5),
      p90: priceQuantile(0.9),
      ...raised(price, minimum, exact.price.mean, exact.price.variance),
    },
    labourQuantile: labour.quantile,
    priceQuantile,
    chanceLabourAtMost: labour.atMost,
    chancePriceAtMost: (amount) => (amount < minimum ? 0 : price.atMost(amount)),
  }
}
