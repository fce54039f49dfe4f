import { normalCdf } from '../../kernel/statistics'

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

/** Quantile of the mixture itself, by a fixed number of halvings (the same bits on every machine). */
export const mixtureQuantile = (parts: Mixture, p: number): number => {
  let low = Math.min(...parts.map((q) => q.mean - 9 * q.sd))
  let high = Math.max(...parts.map((q) => q.mean + 9 * q.sd))
  for (let i = 0; i < 52; i++) {
    const middle = (low + high) / 2
    if (mixtureCdf(parts, middle) < p) low = middle
    else high = middle
  }
  return (low + high) / 2
}
