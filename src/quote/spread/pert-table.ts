import { PERT_WEIGHT, pertVariance } from './pert'
import type { ThreePoint } from './spread-input'

/** Equal-probability strata of a table; each holds the quantile at its middle. */
export const STRATA = 256
const SHAPES = 16
const CELLS = 64

const unitTables: (Float64Array | undefined)[] = []

/**
 * Quantiles of the beta distribution with shapes 1 + 4s and 5 − 4s at the middle of each stratum.
 * The density is integrated over x = t²(3 − 2t), which takes away its kinks at both ends.
 */
const computeUnitTable = (s: number): Float64Array => {
  const up = PERT_WEIGHT * s
  const down = PERT_WEIGHT - up
  const density = (t: number): number => {
    const x = t * t * (3 - 2 * t)
    const rest = (1 - t) * (1 - t) * (1 + 2 * t)
    const power = (up === 0 ? 0 : up * Math.log(x)) + (down === 0 ? 0 : down * Math.log(rest))
    return Math.exp(power) * 6 * t * (1 - t)
  }
  const sum = new Float64Array(CELLS + 1)
  const at = new Float64Array(CELLS + 1)
  for (let i = 1; i <= CELLS; i++) {
    at[i] = i === CELLS ? 0 : density(i / CELLS)
    sum[i] = sum[i - 1]! + (at[i - 1]! + 4 * density((i - 0.5) / CELLS) + at[i]!) / 6
  }
  const table = new Float64Array(STRATA)
  const total = sum[CELLS]!
  let cell = 1
  for (let i = 0; i < STRATA; i++) {
    const target = ((i + 0.5) / STRATA) * total
    while (sum[cell]! < target) cell += 1
    const left = at[cell - 1]!
    const slope = at[cell]! - left
    const part = (target - sum[cell - 1]!) / (sum[cell]! - sum[cell - 1]!)
    // Density taken as linear in the cell: solve for the place that holds this part of its mass.
    const mass = part * (left + slope / 2)
    const root = Math.sqrt(Math.max(0, left * left + 2 * slope * mass))
    const t = (cell - 1 + (left + root === 0 ? part : (2 * mass) / (left + root))) / CELLS
    table[i] = t * t * (3 - 2 * t)
  }
  return table
}

const unitTable = (shape: number): Float64Array => {
  const found = unitTables[shape]
  if (found !== undefined) return found
  const made = computeUnitTable(shape / SHAPES)
  unitTables[shape] = made
  return made
}

/**
 * A three-point estimate between its two nearest shapes: its quantile in stratum i is
 * base + lower · low[i] + upper · high[i].
 */
export const pertSlope = (t: ThreePoint) => {
  const base = t.optimistic
  const range = t.pessimistic - base
  const place = range === 0 ? 0 : ((t.mode - base) / range) * SHAPES
  const shape = Math.min(SHAPES - 1, Math.floor(place))
  const upper = (place - shape) * range
  return { base, lower: range - upper, upper, low: unitTable(shape), high: unitTable(shape + 1) }
}

/** Writes the STRATA quantiles of a three-point estimate into out. */
export const fillPertTable = (t: ThreePoint, out: Float64Array, start = 0): void => {
  const { base, lower, upper, low, high } = pertSlope(t)
  for (let i = 0; i < STRATA; i++) out[start + i] = base + lower * low[i]! + upper * high[i]!
}

const first = new Float64Array(STRATA)
const second = new Float64Array(STRATA)

/** Covariance of two estimates that share one draw (comonotone), before any scale. Zero when one is constant. */
export const comonotoneCovariance = (a: ThreePoint, b: ThreePoint): number => {
  if (a.pessimistic === a.optimistic || b.pessimistic === b.optimistic) return 0
  fillPertTable(a, first)
  fillPertTable(b, second)
  let meanA = 0
  let meanB = 0
  for (let i = 0; i < STRATA; i++) {
    meanA += first[i]!
    meanB += second[i]!
  }
  meanA /= STRATA
  meanB /= STRATA
  let product = 0
  let squareA = 0
  let squareB = 0
  for (let i = 0; i < STRATA; i++) {
    const offA = first[i]! - meanA
    const offB = second[i]! - meanB
    product += offA * offB
    squareA += offA * offA
    squareB += offB * offB
  }
  // The correlation comes from the tables, the deviations are exact; equal shapes are exact throughout.
  return (product * Math.sqrt(pertVariance(a) * pertVariance(b))) / Math.sqrt(squareA * squareB)
}
