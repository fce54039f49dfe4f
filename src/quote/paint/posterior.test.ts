import { describe, expect, it } from 'vitest'
import { mixtureCdf, mixtureMean, mixtureQuantile, mixtureSd } from './mixture'
import { posteriorTopcoat, type ReferenceModel } from './posterior'
import type { PaintPrior } from './priors'
import type { Measured } from './spot'
import type { Spread } from './types'

const density = (x: number, mean: number, sd: number): number => {
  const z = (x - mean) / sd
  return Math.exp(-0.5 * z * z) / sd
}

const grid = (s: Spread, step: number): readonly number[] => {
  const n = Math.ceil((8 * s.sd) / step)
  return Array.from({ length: 2 * n + 1 }, (_, i) => s.mean + (i - n) * step)
}

type Model = { readonly U: Spread; readonly C: Spread; readonly reference: ReferenceModel }

/** The same model by brute force: sums over U, C and the jamb's own coat on fine grids, no algebra. */
const byIntegration = (m: Model, T: Measured, J: Measured | null) => {
  const step = Math.min(T.u, J?.u ?? T.u) / 1.3
  const us = grid(m.U, step)
  const kinds = [
    { weight: m.reference.lightWeight, x: m.reference.light },
    { weight: 1 - m.reference.lightWeight, x: m.reference.cleared },
  ]
  const seen = us.map((u) => {
    if (J === null) return density(u, m.U.mean, m.U.sd)
    let jamb = 0
    for (const { weight, x } of kinds)
      for (const v of grid(x, step))
        jamb += weight * density(v, x.mean, x.sd) * density(J.mean, u + v, J.u)
    return density(u, m.U.mean, m.U.sd) * jamb
  })
  let s0 = 0
  let s1 = 0
  let s2 = 0
  for (const c of grid(m.C, step)) {
    let w = 0
    us.forEach((u, i) => {
      w += seen[i]! * density(T.mean, u + c, T.u)
    })
    w *= density(c, m.C.mean, m.C.sd)
    s0 += w
    s1 += w * c
    s2 += w * c * c
  }
  const mean = s1 / s0
  return { mean, sd: Math.sqrt(s2 / s0 - mean * mean) }
}

/** Park-Miller, so that the cases are the same on every run. */
const numbers = (seed: number) => {
  let state = seed
  return (low: number, high: number): number => {
    state = (state * 48_271) % 2_147_483_647
    return low + ((high - low) * state) / 2_147_483_647
  }
}

const priorOf = (U: Spread, C: Spread): PaintPrior => ({
  system: 'clear',
  weight: 1,
  undercoat: U,
  topcoat: C,
})

describe('closed form against brute-force integration of the same model', () => {
  it('agrees to 0.1 % on mean and sd over 500 random cases', () => {
    const next = numbers(20_260_101)
    let worst = 0
    for (let i = 0; i < 500; i++) {
      const U = { mean: next(30, 80), sd: next(6, 14) }
      const C = { mean: next(35, 65), sd: next(5, 12) }
      const reference: ReferenceModel = {
        lightWeight: next(0.1, 0.9),
        light: { mean: next(10, 22), sd: next(10, 20) },
        cleared: { mean: next(38, 52), sd: next(6, 12) },
      }
      const T = { mean: U.mean + C.mean + next(-30, 30), u: next(1.8, 5) }
      const J = i % 4 === 0 ? null : { mean: U.mean + next(0, 60), u: next(1.8, 5) }
      const closed = posteriorTopcoat([priorOf(U, C)], reference, T, J).topcoat
      const brute = byIntegration({ U, C, reference }, T, J)
      worst = Math.max(
        worst,
        Math.abs(mixtureMean(closed) / brute.mean - 1),
        Math.abs(mixtureSd(closed) / brute.sd - 1),
      )
    }
    expect(worst).toBeLessThan(0.001)
  })
})

describe('values worked out by us before this code was written (own estimate of the inputs)', () => {
  const reference: ReferenceModel = {
    lightWeight: 0.5,
    light: { mean: 16, sd: 16 },
    cleared: { mean: 45, sd: 8 },
  }
  const modern = priorOf({ mean: 65, sd: 10 }, { mean: 45, sd: 7 })
  const older = priorOf({ mean: 60, sd: 10 }, { mean: 42, sd: 7 })
  const at = (um: number | null): Measured | null => (um === null ? null : { mean: um, u: 3 })
  it.each([
    [101, 79, modern, 42.4, 5.9, 37.3, 32.6],
    [120, 85, modern, 48.5, 5.6, 43.2, 38.5],
    [110, 85, modern, 45.2, 5.9, 40.1, 35.4],
    [120, 115, modern, 48.0, 5.2, 43.2, 38.5],
    [95, 70, older, 40.2, 5.7, 34.9, 30.3],
    [100, 60, modern, 43.5, 5.5, 37.0, 32.3],
    [160, 110, modern, 60.9, 5.6, 55.6, 50.9],
    [120, null, modern, 48.1, 5.8, 43.2, 38.5],
    [75, null, modern, 34.1, 5.8, 29.3, 24.6],
    [null, null, modern, 45.0, 7.0, 39.1, 33.5],
  ] as const)('T %s, J %s: mean, sd, q20, q05', (t, j, prior, mean, sd, q20, q05) => {
    const with_ = posteriorTopcoat([prior], reference, at(t), at(j)).topcoat
    const without = posteriorTopcoat([prior], reference, at(t), null).topcoat
    const lower = (p: number) => Math.min(mixtureQuantile(with_, p), mixtureQuantile(without, p))
    const close = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThan(0.1)
    close(mixtureMean(with_), mean)
    close(mixtureSd(with_), sd)
    close(lower(0.2), q20)
    close(lower(0.05), q05)
  })
  it.each([
    [160, 110, 0, 0.001],
    [75, null, 0.005, 0.006],
    [250, null, 0, 1e-9],
    [101, 79, 0.5, 1],
  ] as const)('T %d, J %s: p of the fit between %d and %d', (t, j, low, high) => {
    const { p } = posteriorTopcoat([modern], reference, at(t), at(j))
    expect(p).toBeGreaterThanOrEqual(low)
    expect(p).toBeLessThan(high)
  })
})

describe('the mixture quantile', () => {
  it('is the inverse of the distribution', () => {
    const parts = [
      { weight: 0.3, mean: 20, sd: 3 },
      { weight: 0.7, mean: 50, sd: 8 },
    ]
    for (const p of [0.001, 0.05, 0.2, 0.3, 0.5, 0.95])
      expect(mixtureCdf(parts, mixtureQuantile(parts, p))).toBeCloseTo(p, 9)
  })
  it('is the same as three hundred halvings would give, over random mixtures', () => {
    const next = numbers(7)
    for (let i = 0; i < 300; i++) {
      const w = next(0.001, 0.999)
      const parts = [
        { weight: w, mean: next(10, 90), sd: next(2, 12) },
        { weight: 1 - w, mean: next(10, 90), sd: next(2, 12) },
      ]
      const p = next(0.001, 0.5)
      let low = -200
      let high = 300
      for (let k = 0; k < 300; k++) {
        const middle = (low + high) / 2
        if (mixtureCdf(parts, middle) < p) low = middle
        else high = middle
      }
      expect(Math.abs(mixtureQuantile(parts, p) - low)).toBeLessThan(1e-7)
    }
  })
  it('of one normal is z·sd off the mean (z 1.6448536 at 5 %, 0.8416212 at 20 %, printed tables)', () => {
    const one = [{ weight: 1, mean: 45, sd: 7 }]
    expect(mixtureQuantile(one, 0.05)).toBeCloseTo(45 - 7 * 1.644853627, 6)
    expect(mixtureQuantile(one, 0.2)).toBeCloseTo(45 - 7 * 0.8416212336, 6)
  })
})
