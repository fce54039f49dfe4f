import { betaQuantile } from './statistics-beta'
import { normalQuantile } from './statistics-normal'

/** Fisher's expansion (Abramowitz & Stegun 26.7.5); beyond df 100 000 its error is below 1e-12. */
const nearNormal = (z: number, df: number): number =>
  z + (z * z * z + z) / (4 * df) + (5 * z * z * z * z * z + 16 * z * z * z + 3 * z) / (96 * df * df)

/**
 * One-sided Student t quantile: P(T ≤ t) = p. df may be any positive real number or Infinity.
 * Through the incomplete beta function (Abramowitz & Stegun 26.7.1).
 */
export const studentTQuantile = (p: number, df: number): number => {
  if (!(df > 0)) throw new RangeError('degrees of freedom must be positive')
  if (!(p >= 0 && p <= 1)) throw new RangeError('probability outside 0..1')
  if (p < 0.5) return p === 0 ? Number.NEGATIVE_INFINITY : -studentTQuantile(1 - p, df)
  if (p === 0.5) return 0
  if (p === 1) return Number.POSITIVE_INFINITY
  if (df === Number.POSITIVE_INFINITY) return normalQuantile(p)
  if (df > 100_000) return nearNormal(normalQuantile(p), df)
  // Two forms of one relation; the smaller root keeps its digits.
  const x = betaQuantile(2 * (1 - p), df / 2, 0.5)
  if (x < 0.5) return Math.sqrt((df * (1 - x)) / x)
  const y = betaQuantile(2 * p - 1, 0.5, df / 2)
  return Math.sqrt((df * y) / (1 - y))
}
