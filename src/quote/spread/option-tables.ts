import type { Unknown } from './spread-input'

/** Number of option combinations over some unknowns. */
export const cellCount = (axes: readonly number[], unknowns: readonly Unknown[]): number => {
  let count = 1
  for (const axis of axes) count *= unknowns[axis]!.weights.length
  return count
}

/** Place of each option of an axis: cell / stride mod size is the option. */
export const strideOf = (
  axes: readonly number[],
  axis: number,
  unknowns: readonly Unknown[],
): number => cellCount(axes.slice(axes.indexOf(axis) + 1), unknowns)

/** Probability of each option combination over the axes. */
export const cellWeights = (
  axes: readonly number[],
  unknowns: readonly Unknown[],
): Float64Array => {
  const out = new Float64Array(cellCount(axes, unknowns)).fill(1)
  for (const axis of axes) {
    const { weights } = unknowns[axis]!
    const stride = strideOf(axes, axis, unknowns)
    for (let c = 0; c < out.length; c++)
      out[c]! *= weights[Math.floor(c / stride) % weights.length]!
  }
  return out
}

/** Mean of a table given the options of the kept axes. */
export const marginal = (
  axes: readonly number[],
  values: Float64Array,
  kept: readonly number[],
  unknowns: readonly Unknown[],
): Float64Array => {
  if (kept.length === axes.length) return values
  const out = new Float64Array(cellCount(kept, unknowns))
  const others = axes.map((a) => !kept.includes(a))
  const strides = axes.map((a) => strideOf(axes, a, unknowns))
  const keptStrides = axes.map((a) => (kept.includes(a) ? strideOf(kept, a, unknowns) : 0))
  for (let c = 0; c < values.length; c++) {
    let weight = 1
    let place = 0
    for (let i = 0; i < axes.length; i++) {
      const { weights } = unknowns[axes[i]!]!
      const option = Math.floor(c / strides[i]!) % weights.length
      if (others[i]) weight *= weights[option]!
      else place += option * keptStrides[i]!
    }
    out[place]! += weight * values[c]!
  }
  return out
}

/** Mean of a table under the weights of its cells. */
export const weightedMean = (values: Float64Array, weights: Float64Array): number => {
  let sum = 0
  for (let i = 0; i < values.length; i++) sum += weights[i]! * values[i]!
  return sum
}

/** Covariance of two tables over the same cells. */
export const covariance = (a: Float64Array, b: Float64Array, weights: Float64Array): number => {
  const meanA = weightedMean(a, weights)
  const meanB = weightedMean(b, weights)
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += weights[i]! * (a[i]! - meanA) * (b[i]! - meanB)
  return sum
}
