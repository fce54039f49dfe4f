import stdlibNormal from '@stdlib/stats-base-dists-normal-cdf'
import stdlibT from '@stdlib/stats-base-dists-t-quantile'
import { describe, expect, it } from 'vitest'
import {
  betaCdf,
  betaQuantile,
  chiSquareTail,
  lnGamma,
  normalCdf,
  normalQuantile,
  studentTQuantile,
} from './statistics'

const relative = (got: number, want: number): number => Math.abs(got - want) / Math.abs(want)

describe('Student t, one-sided', () => {
  // NIST/SEMATECH e-Handbook 1.3.6.7.2, columns 0.95 and 0.975.
  it.each([
    [1, 6.314, 12.706],
    [2, 2.92, 4.303],
    [3, 2.353, 3.182],
    [4, 2.132, 2.776],
    [5, 2.015, 2.571],
    [9, 1.833, 2.262],
    [14, 1.761, 2.145],
    [19, 1.729, 2.093],
    [29, 1.699, 2.045],
  ])('table row df %d', (df, t95, t975) => {
    expect(studentTQuantile(0.95, df).toFixed(3)).toBe(t95.toFixed(3))
    expect(studentTQuantile(0.975, df).toFixed(3)).toBe(t975.toFixed(3))
  })

  it('is the closed form for df 1 and 2', () => {
    for (const p of [0.501, 0.6, 0.75, 0.95, 0.99, 0.9999]) {
      expect(relative(studentTQuantile(p, 1), Math.tan(Math.PI * (p - 0.5)))).toBeLessThan(1e-11)
      const two = (2 * p - 1) * Math.sqrt(2 / (4 * p * (1 - p)))
      expect(relative(studentTQuantile(p, 2), two)).toBeLessThan(1e-11)
    }
  })

  it('agrees with the @stdlib quantile for whole and broken df', () => {
    for (const df of [1, 2.5, 3, 4, 7.31, 12.1436, 16.7519, 30, 44.9993, 250, 5000]) {
      for (const p of [0.05, 0.4, 0.55, 0.8, 0.95, 0.975, 0.995]) {
        expect(relative(studentTQuantile(p, df), stdlibT(p, df))).toBeLessThan(1e-9)
      }
    }
  })

  it('meets the normal at infinite df, without a step at the change of method', () => {
    expect(studentTQuantile(0.95, Number.POSITIVE_INFINITY)).toBe(normalQuantile(0.95))
    const below = studentTQuantile(0.95, 100_000)
    const above = studentTQuantile(0.95, 100_000.001)
    expect(Math.abs(below - above)).toBeLessThan(1e-9)
    expect(studentTQuantile(0.5, 3)).toBe(0)
    expect(studentTQuantile(0.05, 3)).toBe(-studentTQuantile(0.95, 3))
    expect(() => studentTQuantile(0.95, 0)).toThrow(RangeError)
    expect(() => studentTQuantile(1.1, 3)).toThrow(RangeError)
  })
})

describe('standard normal', () => {
  it('agrees with @stdlib from −8 to 8', () => {
    for (let i = -80; i <= 80; i++) {
      const x = i / 10
      expect(relative(normalCdf(x), stdlibNormal(x, 0, 1))).toBeLessThan(1e-12)
    }
  })
  // NIST/SEMATECH e-Handbook 1.3.6.7.1 (tail points).
  it.each([
    [0.9, 1.2816],
    [0.95, 1.6449],
    [0.975, 1.96],
    [0.99, 2.3263],
    [0.999, 3.0902],
  ])('quantile of %d', (p, z) => {
    expect(normalQuantile(p)).toBeCloseTo(z, 4)
    expect(normalQuantile(1 - p)).toBeCloseTo(-z, 4)
  })
  it('inverts itself', () => {
    for (const p of [1e-12, 1e-5, 0.02, 0.3, 0.5, 0.7, 0.999]) {
      expect(relative(normalCdf(normalQuantile(p)), p)).toBeLessThan(1e-12)
    }
  })
})

describe('beta', () => {
  it('is the closed form for (1, n), (n, 1), (½, ½) and (2, 2)', () => {
    for (const x of [0.001, 0.1, 0.37, 0.5, 0.8, 0.999]) {
      const y = 1 - x
      expect(relative(betaCdf(x, 1, 5), 1 - y * y * y * y * y)).toBeLessThan(1e-11)
      expect(relative(betaCdf(x, 3, 1), x * x * x)).toBeLessThan(1e-12)
      expect(relative(betaCdf(x, 0.5, 0.5), (2 / Math.PI) * Math.asin(Math.sqrt(x)))).toBeLessThan(
        1e-12,
      )
      expect(relative(betaCdf(x, 2, 2), x * x * (3 - 2 * x))).toBeLessThan(1e-12)
    }
  })
  it('quantile undoes the distribution function', () => {
    for (const [a, b] of [
      [2, 4],
      [1, 5],
      [5, 1],
      [1.8, 4.2],
      [3, 3],
      [0.5, 8],
    ] as const) {
      for (const p of [1e-6, 0.01, 0.25, 0.5, 0.9, 0.9999]) {
        expect(relative(betaCdf(betaQuantile(p, a, b), a, b), p)).toBeLessThan(1e-10)
      }
      expect([betaQuantile(0, a, b), betaQuantile(1, a, b)]).toEqual([0, 1])
    }
  })
  it('lnGamma gives the factorials and √π', () => {
    expect(lnGamma(0.5)).toBeCloseTo(Math.log(Math.sqrt(Math.PI)), 13)
    expect(lnGamma(11)).toBeCloseTo(Math.log(3_628_800), 12)
  })
})

describe('chi-square tail', () => {
  // NIST/SEMATECH e-Handbook 1.3.6.7.4, upper 0.05 and 0.01.
  it.each([
    [1, 3.841, 6.635],
    [2, 5.991, 9.21],
    [3, 7.815, 11.345],
    [5, 11.07, 15.086],
    [10, 18.307, 23.209],
  ])('table row df %d', (df, at5, at1) => {
    expect(chiSquareTail(at5, df)).toBeCloseTo(0.05, 4)
    expect(chiSquareTail(at1, df)).toBeCloseTo(0.01, 5)
  })
  it('is the closed form for df 1, 2 and 4', () => {
    for (const x of [0.01, 0.5, 2, 6.6, 20, 60]) {
      expect(relative(chiSquareTail(x, 1), 2 * normalCdf(-Math.sqrt(x)))).toBeLessThan(1e-12)
      expect(relative(chiSquareTail(x, 2), Math.exp(-x / 2))).toBeLessThan(1e-12)
      expect(relative(chiSquareTail(x, 4), Math.exp(-x / 2) * (1 + x / 2))).toBeLessThan(1e-12)
    }
    expect(chiSquareTail(0, 3)).toBe(1)
  })
})
