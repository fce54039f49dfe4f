import { normalCdf, normalQuantile } from '../../kernel/statistics'

/** A weighted sum of normals; the weights add to 1. */
export type Mixture = readonly {
  readonly weight: number
  readonly mean: number
  readonly sd: number
}[]

export const mixtureMean = (parts: Mixture): number =>
  parts.reduce((sum, p) => sum + p.weight * p.mean, 0)

/** Law of total variance. */
export const mixtureSd = (parts: Mixture): number => {
  const centre = mixtureMean(parts)
  return Math.sqrt(
    parts.reduce((sum, p) => {
      const d = p.mean - centre
      return sum + p.weight * (p.sd * p.sd + d * d)
    }, 0),
  )
}

export const mixtureCdf = (parts: Mixture, x: number): number =>
  parts.reduce((sum, p) => sum + p.weight * normalCdf((x - p.mean) / p.sd), 0)

const density = (parts: Mixture, x: number): number =>
  parts.reduce((sum, p) => {
    const z = (x - p.mean) / p.sd
    return sum + (p.weight / p.sd) * Math.exp(-0.5 * z * z) * INVERSE_ROOT_TWO_PI
  }, 0)

const INVERSE_ROOT_TWO_PI = 1 / Math.sqrt(2 * Math.PI)
const STEPS = 16

/**
 * Quantile of the mixture itself. It lies between the quantiles of its parts; inside that bracket a Newton step is
 * taken where it stays inside and a halving where not, a bounded number of times (the same bits everywhere).
 */
export const mixtureQuantile = (parts: Mixture, p: number): number => {
  const z = normalQuantile(p)
  const ends = parts.map((q) => q.mean + z * q.sd)
  let low = Math.min(...ends)
  let high = Math.max(...ends)
  let x = mixtureMean(ends.map((mean, i) => ({ ...parts[i]!, mean })))
  for (let i = 0; i < STEPS && high - low > 1e-11; i++) {
    const excess = mixtureCdf(parts, x) - p
    if (excess < 0) low = x
    else high = x
    const next = x - excess / density(parts, x)
    // Newton squares its error, so a step this small lands within rounding.
    if (Math.abs(next - x) < 1e-6) return next
    x = next > low && next < high ? next : (low + high) / 2
  }
  return x
}
