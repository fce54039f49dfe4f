import { type RoundingMode, roundBigRatio, roundProduct } from './rounding'

/** Rates are whole millionths, so that 6.625 % is 66 250 and 8.25 % is 82 500. */
export const MILLION = 1_000_000
/** Basis points: hundredths of a percent; 10 000 is the whole. */
export const BASIS = 10_000

/** Tax is rounded once for every line, or once on the total. */
export const taxBases = ['line', 'total'] as const
export type TaxBasis = (typeof taxBases)[number]

/** Part of an amount (minor units) at a rate in millionths. */
export const rateOf = (amount: number, rateMillionths: number, mode: RoundingMode): number =>
  roundProduct(amount, rateMillionths, MILLION, mode)

/** Part of an amount (minor units) at a share in basis points. */
export const percentOf = (amount: number, basisPoints: number, mode: RoundingMode): number =>
  roundProduct(amount, basisPoints, BASIS, mode)

/** Tax contained in an amount that includes it: gross × rate / (1 + rate). */
export const taxWithin = (gross: number, rateMillionths: number, mode: RoundingMode): number =>
  roundProduct(gross, rateMillionths, MILLION + rateMillionths, mode)

/** Tax on net amounts (minor units), rounded per line or once on their sum. Order never matters. */
export const taxOn = (
  amounts: readonly number[],
  rateMillionths: number,
  mode: RoundingMode,
  basis: TaxBasis,
): number => {
  if (basis === 'total') return rateOf(sumOf(amounts), rateMillionths, mode)
  return sumOf(amounts.map((a) => rateOf(a, rateMillionths, mode)))
}

/** Sum of whole amounts; throws when one is not whole or the sum leaves the safe range. */
export const sumOf = (amounts: readonly number[]): number => {
  let sum = 0
  for (const a of amounts) {
    sum += a
    if (!Number.isSafeInteger(a) || !Number.isSafeInteger(sum)) {
      throw new RangeError('amounts must be whole minor units')
    }
  }
  return sum
}

// Below this a weight counts as zero; it keeps the scaling inside the range of a double.
const NOTHING = 1e-200
const TWO_TO_52 = 4_503_599_627_370_496

/** Weights as integers: whole ones as they are, others scaled by a power of two (exact but for far tails). */
const wholeWeights = (weights: readonly number[]): bigint[] => {
  let largest = 0
  let whole = true
  for (const w of weights) {
    if (!(w >= 0 && w < Number.POSITIVE_INFINITY)) throw new RangeError('weights must be ≥ 0')
    if (w > largest) largest = w
    if (!Number.isSafeInteger(w)) whole = false
  }
  if (largest < NOTHING) return weights.map(() => 1n)
  if (whole) return weights.map((w) => BigInt(w))
  let scale = 1
  while (largest * scale < 1) scale *= 2
  while (largest * scale >= 2) scale /= 2
  return weights.map((w) => BigInt(Math.round(w * scale * TWO_TO_52)))
}

/**
 * Splits a whole amount by weights without losing a unit: the shares sum to the total exactly and each
 * lies within one unit of its exact share (largest remainder; ties go to the earlier weight).
 * All weights zero: equal parts. A negative total is split as its opposite. Throws on no weights.
 */
export const allocate = (total: number, weights: readonly number[]): number[] => {
  if (!Number.isSafeInteger(total)) throw new RangeError('amounts must be whole minor units')
  if (weights.length === 0) throw new RangeError('nothing to allocate over')
  if (total < 0) return allocate(-total, weights).map((share) => 0 - share)
  const whole = wholeWeights(weights)
  const sum = whole.reduce((a, b) => a + b, 0n)
  const parts = whole.map((w, index) => {
    const product = BigInt(total) * w
    return { index, share: Number(roundBigRatio(product, sum, 'floor')), rest: product % sum }
  })
  const shares = parts.map((p) => p.share)
  let left = total - sumOf(shares)
  parts.sort((a, b) => (a.rest === b.rest ? a.index - b.index : a.rest > b.rest ? -1 : 1))
  for (const { index } of parts) {
    if (left === 0) break
    shares[index] = shares[index]! + 1
    left -= 1
  }
  return shares
}
