/** Summary statistics; the distributions and GUM rules beside it are reached through this file too. */
export { betaCdf, betaQuantile, lnGamma } from './statistics-beta'
export { chiSquareTail } from './statistics-chi-square'
export { normalCdf, normalQuantile } from './statistics-normal'
export { studentTQuantile } from './statistics-student'
export { combineUncertainty, welchSatterthwaite, wilsonInterval } from './statistics-uncertainty'

/** Arithmetic mean, with a second pass that takes up the rounding error of the first. Throws on no values. */
export const mean = (values: readonly number[]): number => {
  if (values.length === 0) throw new RangeError('mean of no values')
  let sum = 0
  for (const v of values) sum += v
  const first = sum / values.length
  let rest = 0
  for (const v of values) rest += v - first
  return first + rest / values.length
}

/** Sample standard deviation (denominator n − 1), two-pass with correction. Throws below two values. */
export const sampleSd = (values: readonly number[]): number => {
  const n = values.length
  if (n < 2) throw new RangeError('standard deviation needs two values')
  const centre = mean(values)
  let squares = 0
  let rest = 0
  for (const v of values) {
    const d = v - centre
    squares += d * d
    rest += d
  }
  return Math.sqrt(Math.max(0, squares - (rest * rest) / n) / (n - 1))
}

/** Middle value; for an even count the mean of the two middle ones. Throws on no values. */
export const median = (values: readonly number[]): number => {
  if (values.length === 0) throw new RangeError('median of no values')
  const sorted = [...values].sort((a, b) => a - b)
  const half = sorted.length >> 1
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2
}

/** Median of the absolute distances from the median (unscaled; × 1.4826 to compare with a normal sd). */
export const mad = (values: readonly number[]): number => {
  const centre = median(values)
  return median(values.map((v) => Math.abs(v - centre)))
}
