import type { ThreePoint } from './spread-input'

/** Weight of the most likely value; 4 is the classic choice. */
export const PERT_WEIGHT = 4

/**
 * Classic three-point estimate of Malcolm, Roseboom, Clark and Fazar (Operations Research 7, 1959):
 * mean (a + 4m + b) / 6, variance ((b − a) / 6)². A rule of thumb kept to compare with.
 */
export const classicPert = (
  t: ThreePoint,
): { readonly mean: number; readonly variance: number } => {
  const sd = (t.pessimistic - t.optimistic) / 6
  return { mean: (t.optimistic + 4 * t.mode + t.pessimistic) / 6, variance: sd * sd }
}

/** Beta shapes of the modified PERT distribution; needs optimistic < pessimistic. */
export const pertShapes = (
  t: ThreePoint,
  weight = PERT_WEIGHT,
): { readonly alpha: number; readonly beta: number } => {
  const range = t.pessimistic - t.optimistic
  return {
    alpha: 1 + (weight * (t.mode - t.optimistic)) / range,
    beta: 1 + (weight * (t.pessimistic - t.mode)) / range,
  }
}

/** Mean of the modified PERT distribution. */
export const pertMean = (t: ThreePoint, weight = PERT_WEIGHT): number =>
  (t.optimistic + weight * t.mode + t.pessimistic) / (weight + 2)

/** Variance of the modified PERT distribution (that of its beta, unlike the classic rule of thumb). */
export const pertVariance = (t: ThreePoint, weight = PERT_WEIGHT): number => {
  const mean = pertMean(t, weight)
  return ((mean - t.optimistic) * (t.pessimistic - mean)) / (weight + 3)
}

/** Throws unless optimistic ≤ mode ≤ pessimistic, all finite and not negative. */
export const assertThreePoint = (t: ThreePoint): void => {
  const ordered = 0 <= t.optimistic && t.optimistic <= t.mode && t.mode <= t.pessimistic
  if (!ordered || t.pessimistic === Number.POSITIVE_INFINITY) {
    throw new RangeError('a three-point estimate must be ordered, finite and not negative')
  }
}
