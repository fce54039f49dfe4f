/** A distribution as counts in equal cells, linear within a cell. */
export type Tally = {
  readonly quantile: (p: number) => number
  readonly atMost: (value: number) => number
  /** Mean of max(0, limit − value) and of max(0, limit² − value²). */
  readonly shortfall: (limit: number) => { readonly mean: number; readonly square: number }
}

const CELLS = 4096

/** Everything at one value. */
const constant = (value: number): Tally => ({
  quantile: () => value,
  atMost: (limit) => (limit >= value ? 1 : 0),
  shortfall: (limit) => ({
    mean: Math.max(0, limit - value),
    square: Math.max(0, limit * limit - value * value),
  }),
})

/**
 * Counts a sample, moved and stretched so that its mean and variance are the exact ones given.
 * Cells reach from 6 sd below the mean (never under floor) to 10 sd above; what lies beyond counts at the end.
 */
export const tallyOf = (
  values: Float64Array,
  mean: number,
  variance: number,
  floor: number,
): Tally => {
  const n = values.length
  // Spread that is only rounding error of the moments is none.
  if (variance <= 1e-18 * mean * mean) return constant(mean)
  let sum = 0
  let squares = 0
  for (let j = 0; j < n; j++) {
    const d = values[j]! - mean
    sum += d
    squares += d * d
  }
  const off = sum / n
  const sampled = squares / n - off * off
  if (!(sampled > 0)) return constant(mean)
  const sd = Math.sqrt(variance)
  const low = Math.max(floor, mean - 6 * sd)
  const width = (mean + 10 * sd - low) / CELLS
  const stretch = Math.sqrt(variance / sampled)
  const slope = stretch / width
  const shift = (mean - (mean + off) * stretch - low) / width
  const upTo = new Uint32Array(CELLS + 1)
  for (let j = 0; j < n; j++) {
    const cell = values[j]! * slope + shift
    upTo[cell < 0 ? 1 : cell >= CELLS ? CELLS : (cell | 0) + 1]! += 1
  }
  for (let c = 1; c <= CELLS; c++) upTo[c]! += upTo[c - 1]!

  const quantile = (p: number): number => {
    if (!(p >= 0 && p <= 1)) throw new RangeError('probability outside 0..1')
    const target = p * n
    let from = 0
    let to = CELLS
    while (from < to) {
      const middle = (from + to) >> 1
      if (upTo[middle + 1]! >= target && upTo[middle + 1]! > 0) to = middle
      else from = middle + 1
    }
    const inside = (target - upTo[from]!) / (upTo[from + 1]! - upTo[from]!)
    return low + (from + inside) * width
  }
  const atMost = (value: number): number => {
    const place = (value - low) / width
    if (!(place > 0)) return 0
    if (place >= CELLS) return 1
    const cell = Math.floor(place)
    return (upTo[cell]! + (place - cell) * (upTo[cell + 1]! - upTo[cell]!)) / n
  }
  const shortfall = (limit: number) => {
    let first = 0
    let second = 0
    for (let c = 0; c < CELLS; c++) {
      const value = low + (c + 0.5) * width
      if (value >= limit) break
      const count = upTo[c + 1]! - upTo[c]!
      first += count * (limit - value)
      second += count * (limit * limit - value * value)
    }
    return { mean: first / n, square: second / n }
  }
  return { quantile, atMost, shortfall }
}
