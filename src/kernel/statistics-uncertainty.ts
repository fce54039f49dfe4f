import { normalQuantile } from './statistics-normal'

/** Combined standard uncertainty of independent components in one unit: root of the sum of squares (GUM 5.1.2). */
export const combineUncertainty = (components: readonly number[]): number => {
  let sum = 0
  for (const u of components) sum += u * u
  return Math.sqrt(sum)
}

/**
 * Effective degrees of freedom (Welch–Satterthwaite, GUM G.4.1), unrounded.
 * A component known exactly has df Infinity; Infinity comes back when nothing carries a finite df.
 */
export const welchSatterthwaite = (
  components: readonly { readonly u: number; readonly df: number }[],
): number => {
  const total = combineUncertainty(components.map((c) => c.u))
  let bottom = 0
  for (const { u, df } of components) {
    if (!(df > 0)) throw new RangeError('degrees of freedom must be positive')
    bottom += (u * u * u * u) / df
  }
  return bottom === 0 ? Number.POSITIVE_INFINITY : (total * total * total * total) / bottom
}

/** Wilson score interval of a share, two-sided; default confidence 0.95. With n = 0 it is the whole 0..1. */
export const wilsonInterval = (
  successes: number,
  n: number,
  confidence = 0.95,
): { readonly low: number; readonly high: number } => {
  if (n === 0) return { low: 0, high: 1 }
  if (!(successes >= 0 && successes <= n)) throw new RangeError('successes outside 0..n')
  const z = normalQuantile((1 + confidence) / 2)
  const share = successes / n
  const middle = share + (z * z) / (2 * n)
  const reach = z * Math.sqrt((share * (1 - share)) / n + (z * z) / (4 * n * n))
  const scale = 1 + (z * z) / n
  return {
    low: successes === 0 ? 0 : (middle - reach) / scale,
    high: successes === n ? 1 : (middle + reach) / scale,
  }
}
