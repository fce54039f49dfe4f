import { lnGamma } from './statistics-beta'

/** Lower regularised incomplete gamma by its series (Abramowitz & Stegun 6.5.29). */
const lowerSeries = (s: number, x: number): number => {
  let term = 1 / s
  let sum = term
  for (let k = 1; term > 1e-17 * sum; k++) {
    term *= x / (s + k)
    sum += term
  }
  return sum * Math.exp(s * Math.log(x) - x - lnGamma(s))
}

/** Upper regularised incomplete gamma by its continued fraction (Abramowitz & Stegun 6.5.31), Lentz. */
const upperFraction = (s: number, x: number): number => {
  let b = x + 1 - s
  let c = 1e300
  let d = 1 / b
  let h = d
  for (let k = 1; k <= 10_000; k++) {
    const a = k * (s - k)
    b += 2
    d = 1 / (a * d + b)
    c = b + a / c
    h *= d * c
    if (Math.abs(d * c - 1) < 1e-16) break
  }
  return h * Math.exp(s * Math.log(x) - x - lnGamma(s))
}

/** P(χ² > x) with df ≥ 1 degrees of freedom. */
export const chiSquareTail = (x: number, df: number): number => {
  if (!(df > 0)) throw new RangeError('degrees of freedom must be positive')
  if (x <= 0) return 1
  const s = df / 2
  const half = x / 2
  return half < s + 1 ? 1 - lowerSeries(s, half) : upperFraction(s, half)
}
