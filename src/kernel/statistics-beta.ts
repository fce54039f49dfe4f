const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313,
  -176.61502916214059, 12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6,
  1.5056327351493116e-7,
] as const

/** Natural logarithm of Γ(x) for x > 0 (Lanczos, g = 7, nine terms; about 15 digits). */
export const lnGamma = (x: number): number => {
  if (x < 0.5) return lnGamma(x + 1) - Math.log(x)
  const z = x - 1
  let sum: number = LANCZOS[0]
  for (let i = 1; i < LANCZOS.length; i++) sum += LANCZOS[i]! / (z + i)
  const t = z + 7.5
  return 0.9189385332046727 + (z + 0.5) * Math.log(t) - t + Math.log(sum)
}

const lnBeta = (a: number, b: number): number => lnGamma(a) + lnGamma(b) - lnGamma(a + b)

const notZero = (v: number): number => (Math.abs(v) < 1e-300 ? 1e-300 : v)

/** Continued fraction of the incomplete beta function (Abramowitz & Stegun 26.5.8), modified Lentz. */
const fraction = (x: number, a: number, b: number): number => {
  let c = 1
  let d = 1 / notZero(1 - ((a + b) * x) / (a + 1))
  let h = d
  for (let m = 1; m <= 10_000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    d = 1 / notZero(1 + even * d)
    c = notZero(1 + even / c)
    h *= d * c
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    d = 1 / notZero(1 + odd * d)
    c = notZero(1 + odd / c)
    const step = d * c
    h *= step
    if (Math.abs(step - 1) < 1e-16) break
  }
  return h
}

/** Density of the beta distribution with shapes a, b > 0 on 0 < x < 1. */
export const betaPdf = (x: number, a: number, b: number): number =>
  x <= 0 || x >= 1 ? 0 : Math.exp((a - 1) * Math.log(x) + (b - 1) * Math.log(1 - x) - lnBeta(a, b))

/** Regularised incomplete beta function I_x(a, b) = P(X ≤ x) for shapes a, b > 0. */
export const betaCdf = (x: number, a: number, b: number): number => {
  if (!(a > 0 && b > 0)) throw new RangeError('beta shapes must be positive')
  if (x <= 0) return 0
  if (x >= 1) return 1
  const front = Math.exp(a * Math.log(x) + b * Math.log(1 - x) - lnBeta(a, b))
  return x < (a + 1) / (a + b + 2)
    ? (front * fraction(x, a, b)) / a
    : 1 - (front * fraction(1 - x, b, a)) / b
}

/** Quantile of the beta distribution, 0 ≤ p ≤ 1: Newton kept inside a shrinking bracket. */
export const betaQuantile = (p: number, a: number, b: number): number => {
  if (!(p >= 0 && p <= 1)) throw new RangeError('probability outside 0..1')
  if (p === 0 || p === 1) return p
  let low = 0
  let high = 1
  let x = a / (a + b)
  for (let i = 0; i < 400; i++) {
    const miss = betaCdf(x, a, b) - p
    if (miss === 0) return x
    if (miss > 0) high = x
    else low = x
    const newton = x - miss / betaPdf(x, a, b)
    const next = newton > low && newton < high ? newton : (low + high) / 2
    if (Math.abs(next - x) <= 1e-16 * next) return next
    x = next
  }
  return x
}
