/** Named rounding modes, with the meaning of the Java RoundingMode names. */
export const roundingModes = [
  'half-up',
  'half-even',
  'half-down',
  'up',
  'down',
  'ceiling',
  'floor',
] as const
export type RoundingMode = (typeof roundingModes)[number]

/** Does the quotient cut toward zero move one away from zero? half: −1 below, 0 exactly, 1 above one half. */
const movesAway = (mode: RoundingMode, half: number, odd: boolean, negative: boolean): boolean => {
  switch (mode) {
    case 'half-up':
      return half >= 0
    case 'half-even':
      return half > 0 || (half === 0 && odd)
    case 'half-down':
      return half > 0
    case 'up':
      return true
    case 'down':
      return false
    case 'ceiling':
      return !negative
    case 'floor':
      return negative
  }
}

/** numerator / denominator as a whole number under the mode, in BigInt. Throws on a denominator below 1. */
export const roundBigRatio = (
  numerator: bigint,
  denominator: bigint,
  mode: RoundingMode,
): bigint => {
  if (denominator <= 0n) throw new RangeError('denominator must be positive')
  const cut = numerator / denominator
  const rest = numerator % denominator
  if (rest === 0n) return cut
  const negative = numerator < 0n
  const twice = (negative ? -rest : rest) * 2n
  const half = twice < denominator ? -1 : twice > denominator ? 1 : 0
  if (!movesAway(mode, half, cut % 2n !== 0n, negative)) return cut
  return negative ? cut - 1n : cut + 1n
}

/**
 * numerator × factor / denominator as a whole number under the mode. All three are safe integers, the
 * product may pass the safe range; throws when an input or the result is not a safe integer.
 */
export const roundProduct = (
  numerator: number,
  factor: number,
  denominator: number,
  mode: RoundingMode,
): number => {
  for (const v of [numerator, factor, denominator]) {
    if (!Number.isSafeInteger(v)) throw new RangeError('whole safe numbers only')
  }
  const exact = roundBigRatio(BigInt(numerator) * BigInt(factor), BigInt(denominator), mode)
  const result = Number(exact)
  if (!Number.isSafeInteger(result)) throw new RangeError('result outside the safe range')
  return result
}

/** numerator / denominator (safe integers, denominator > 0) as a whole number under the mode. */
export const roundRatio = (numerator: number, denominator: number, mode: RoundingMode): number =>
  roundProduct(numerator, 1, denominator, mode)

/** The multiple of step (a whole number > 0) that the mode picks for a whole value. */
export const roundToStep = (value: number, step: number, mode: RoundingMode): number =>
  roundRatio(value, step, mode) * step
