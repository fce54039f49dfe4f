const ROOT_TWO_PI = 2.5066282746310002

const density = (x: number): number => Math.exp(-0.5 * x * x) / ROOT_TWO_PI

/** Upper tail for x > 0 by the continued fraction of Mills' ratio (Abramowitz & Stegun 26.2.14), backwards. */
const farTail = (x: number): number => {
  let f = x
  for (let k = 120; k >= 1; k--) f = x + k / f
  return density(x) / f
}

/** Lower half as a power series (Abramowitz & Stegun 26.2.11); exact to rounding for small |x|. */
const nearCdf = (x: number): number => {
  let term = x
  let sum = x
  for (let k = 3; Math.abs(term) > 1e-17 * Math.abs(sum); k += 2) {
    term = (term * x * x) / k
    sum += term
  }
  return 0.5 + density(x) * sum
}

/** Standard normal distribution function Φ(x); relative accuracy holds in both tails. */
export const normalCdf = (x: number): number => {
  if (x < -2.5) return farTail(-x)
  if (x > 2.5) return 1 - farTail(x)
  return nearCdf(x)
}

/**
 * Standard normal quantile for 0 ≤ p ≤ 1 (−∞ and ∞ at the ends).
 * Start: Abramowitz & Stegun 26.2.23 (error below 4.5e-4), then three Halley steps on normalCdf.
 */
export const normalQuantile = (p: number): number => {
  if (!(p >= 0 && p <= 1)) throw new RangeError('probability outside 0..1')
  if (p > 0.5) return -normalQuantile(1 - p)
  if (p === 0) return Number.NEGATIVE_INFINITY
  if (p === 0.5) return 0
  const t = Math.sqrt(-2 * Math.log(p))
  const top = 2.515517 + t * (0.802853 + t * 0.010328)
  const bottom = 1 + t * (1.432788 + t * (0.189269 + t * 0.001308))
  let x = top / bottom - t
  for (let i = 0; i < 3; i++) {
    const pdf = density(x)
    if (pdf === 0) break
    const u = (normalCdf(x) - p) / pdf
    x -= u / (1 + (x * u) / 2)
    // The steps converge cubically: after one this small nothing is left to gain.
    if (Math.abs(u) < 1e-6) break
  }
  return x
}
