import { describe, expect, it } from 'vitest'
import { betaQuantile, normalCdf } from '../../kernel/statistics'
import { classicPert, pertMean, pertShapes, pertVariance } from './pert'
import { comonotoneCovariance, fillPertTable, STRATA } from './pert-table'

const three = (optimistic: number, mode: number, pessimistic: number) => ({
  optimistic,
  mode,
  pessimistic,
})

describe('classic three-point estimate (Malcolm et al., Operations Research 7, 1959)', () => {
  it('management-science textbook, path 1-3-5-7: expected 24, P(≤ 28) = 0.9633 in print', () => {
    const weeks = [
      three(5, 8, 17),
      three(7, 10, 13),
      three(3, 5, 7),
      three(1, 3, 5),
      three(4, 6, 8),
      three(3, 3, 3),
      three(3, 4, 5),
    ]
    const each = weeks.map(classicPert)
    expect(each.map((e) => e.mean)).toEqual([9, 10, 5, 3, 6, 3, 4])
    const path = [0, 2, 4, 6].map((i) => each[i]!)
    const mean = path.reduce((sum, e) => sum + e.mean, 0)
    const variance = path.reduce((sum, e) => sum + e.variance, 0)
    expect(mean).toBe(24)
    expect(variance).toBeCloseTo(5, 12)
    // Print reads the table at z = 1.79; unrounded z = 1.788854.
    expect(normalCdf(1.79)).toBeCloseTo(0.9633, 4)
    expect(normalCdf((28 - mean) / Math.sqrt(variance))).toBeCloseTo(0.963180865, 9)
  })

  it('construction-project textbook, critical path: 44 weeks, variance 9, P(≤ 47) = 0.8413 (data from memory)', () => {
    const critical = [
      three(1, 2, 3),
      three(2, 3.5, 8),
      three(6, 9, 18),
      three(1, 4.5, 5),
      three(4, 4, 10),
      three(3, 9, 9),
      three(1, 5.5, 7),
      three(5, 5.5, 9),
    ].map(classicPert)
    expect(critical.map((e) => e.mean)).toEqual([2, 4, 10, 4, 5, 8, 5, 6])
    const mean = critical.reduce((sum, e) => sum + e.mean, 0)
    const variance = critical.reduce((sum, e) => sum + e.variance, 0)
    expect(mean).toBe(44)
    expect(variance).toBeCloseTo(9, 12)
    expect(normalCdf((47 - mean) / Math.sqrt(variance))).toBeCloseTo(0.8413447461, 9)
  })
})

describe('modified PERT (formulas as in the R package mc2d and the Wolfram reference)', () => {
  it.each([
    [three(5, 8, 17), 4, 2, 4, 9, 32 / 7],
    [three(0, 5, 10), 4, 3, 3, 5, 25 / 7],
    [three(2, 4, 12), 4, 9 / 5, 21 / 5, 5, 3],
    [three(1, 1, 7), 4, 1, 5, 2, 5 / 7],
    [three(5, 8, 17), 2, 1.5, 2.5, 9.5, 6.75],
  ])('%j with weight %d', (t, weight, alpha, beta, mean, variance) => {
    const shapes = pertShapes(t, weight)
    expect(shapes.alpha).toBeCloseTo(alpha, 12)
    expect(shapes.beta).toBeCloseTo(beta, 12)
    expect(pertMean(t, weight)).toBeCloseTo(mean, 12)
    expect(pertVariance(t, weight)).toBeCloseTo(variance, 12)
    // The same from the beta distribution itself.
    const range = t.pessimistic - t.optimistic
    const n = alpha + beta
    expect(pertVariance(t, weight)).toBeCloseTo(
      (range * range * alpha * beta) / (n * n * (n + 1)),
      12,
    )
  })

  it('is not the classic rule of thumb: a symmetric estimate has range²/28, not range²/36', () => {
    const t = three(0, 5, 10)
    expect(pertVariance(t)).toBeCloseTo(100 / 28, 12)
    expect(classicPert(t).variance).toBeCloseTo(100 / 36, 12)
  })
})

describe('quantile tables', () => {
  const shapes = [0, 0.01, 0.1, 0.25, 1 / 3, 0.49, 0.5, 0.77, 0.985, 1]
  it.each(shapes)('mode at %d of the range: the beta quantile within 0.1 % of the range', (s) => {
    const table = new Float64Array(STRATA)
    fillPertTable(three(0, s, 1), table)
    for (let i = 0; i < STRATA; i += 7) {
      const exact = betaQuantile((i + 0.5) / STRATA, 1 + 4 * s, 5 - 4 * s)
      expect(Math.abs(table[i]! - exact)).toBeLessThan(1e-3)
    }
  })

  it('scales, shifts and writes where it is told to', () => {
    const unit = new Float64Array(STRATA)
    const out = new Float64Array(3 * STRATA)
    fillPertTable(three(0, 0.25, 1), unit)
    fillPertTable(three(10, 20, 50), out, STRATA)
    expect(out[STRATA - 1]).toBe(0)
    expect(out[2 * STRATA]).toBe(0)
    for (let i = 0; i < STRATA; i++) expect(out[STRATA + i]).toBeCloseTo(10 + 40 * unit[i]!, 10)
    fillPertTable(three(7, 7, 7), out)
    expect([out[0], out[STRATA - 1]]).toEqual([7, 7])
  })

  it('comonotone covariance: the variance for equal shapes, a fine quadrature for others', () => {
    const a = three(10, 20, 50)
    const b = three(0, 900, 1000)
    const twice = three(20, 40, 100)
    expect(comonotoneCovariance(a, twice) / (2 * pertVariance(a))).toBeCloseTo(1, 12)
    const n = 20_000
    let product = 0
    for (let i = 0; i < n; i++) {
      const p = (i + 0.5) / n
      product += (10 + 40 * betaQuantile(p, 2, 4)) * 1000 * betaQuantile(p, 4.6, 1.4)
    }
    const exact = product / n - pertMean(a) * pertMean(b)
    expect(Math.abs(comonotoneCovariance(a, b) / exact - 1)).toBeLessThan(0.002)
    expect(comonotoneCovariance(a, three(5, 5, 5))).toBe(0)
  })
})
