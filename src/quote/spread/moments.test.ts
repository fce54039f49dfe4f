import { describe, expect, it } from 'vitest'
import { plainMonteCarlo } from '../../../tests/montecarlo/plain-monte-carlo'
import { randomDocket } from '../../../tests/montecarlo/random-docket'
import { condition } from './condition'
import { moments } from './moments'
import { narrowing } from './narrowing'
import { pertMean, pertVariance } from './pert'
import type { SpreadInput } from './spread-input'

const nothing = { optimistic: 0, mode: 0, pessimistic: 0 }
const exactly = (value: number) => ({ optimistic: value, mode: value, pessimistic: value })
const t = { optimistic: 5, mode: 8, pessimistic: 17 }
const base = { unknowns: [], carSd: 0, fixedMoney: 0, minimumMoney: 0 }

describe('worked by hand', () => {
  it('one modified PERT step (5, 8, 17): mean 9, variance 32/7', () => {
    const items = [
      { id: 'a', ratePerHour: 6000, cases: [{ when: [], chance: 1, minutes: t, money: nothing }] },
    ]
    const got = moments({ ...base, items })
    expect(got.labour.mean).toBeCloseTo(9, 12)
    expect(got.labour.variance).toBeCloseTo(32 / 7, 12)
    expect(got.price.variance).toBeCloseTo((10_000 * 32) / 7, 8)
  })

  it('two items under one shared answer add their differences before squaring', () => {
    const leaf = (option: number, minutes: number) => ({
      when: [[0, 1 << option]] as const,
      chance: 1,
      minutes: exactly(minutes),
      money: nothing,
    })
    const item = (id: string) => ({ id, ratePerHour: 60, cases: [leaf(0, 10), leaf(1, 30)] })
    const unknowns = [{ id: 'u', weights: [0.25, 0.75], carSd: 0.1 }]
    const got = moments({ ...base, unknowns, items: [item('a'), item('b')], carSd: 0.2 })
    // S is 20 or 60 with chances ¼ and ¾: mean 50, variance 300; F has E F² = exp(0.05).
    expect(got.labour.mean).toBeCloseTo(50, 12)
    expect(got.labour.variance).toBeCloseTo(Math.exp(0.05) * (300 + 2500) - 2500, 9)
  })

  it('money follows the minutes of its own item, not the car factor', () => {
    const item = {
      id: 'a',
      ratePerHour: 60,
      cases: [{ when: [], chance: 0.5, minutes: t, money: t }],
    }
    const got = moments({ ...base, items: [item], carSd: 0.3 })
    const mean = pertMean(t) / 2
    const square = (pertVariance(t) + pertMean(t) * pertMean(t)) / 2
    // P = (F + 1) X with E F = 1, E F² = exp(0.09).
    expect(got.price.mean).toBeCloseTo(2 * mean, 12)
    expect(got.price.variance).toBeCloseTo((Math.exp(0.09) + 3) * square - 4 * mean * mean, 9)
  })
})

it('agrees with a plain Monte Carlo that shares no code', () => {
  for (const seed of [41, 42, 43, 44]) {
    const docket = { ...randomDocket(seed), minimumMoney: 0 }
    const drawn = plainMonteCarlo(docket, 100_000, seed)
    const exact = moments(docket)
    for (const [sample, want] of [
      [drawn.labour, exact.labour],
      [drawn.price, exact.price],
    ] as const) {
      const mean = sample.reduce((a, b) => a + b, 0) / sample.length
      const variance = sample.reduce((a, b) => a + (b - mean) * (b - mean), 0) / sample.length
      // Six standard errors of the sampled mean; the variance to 4 %.
      const error = Math.sqrt(want.variance / sample.length)
      expect(Math.abs(mean - want.mean)).toBeLessThan(6 * error)
      expect(Math.abs(variance / want.variance - 1)).toBeLessThan(0.04)
    }
  }
})

const many = Array.from({ length: 200 }, (_, i) => randomDocket(900 + i)).filter(
  (d) => d.unknowns.length > 0,
)
const each = (docket: SpreadInput) => docket.unknowns.map((_, k) => k)

describe('an answer narrows', () => {
  it('variance unsure ≥ weighted variance of the answers, mean is their weighted mean', () => {
    expect(many.length).toBeGreaterThan(100)
    for (const docket of many) {
      const unsure = moments(docket)
      for (const k of each(docket)) {
        const answered = docket.unknowns[k]!.weights.map((_, o) => moments(condition(docket, k, o)))
        for (const of of ['labour', 'price'] as const) {
          let mean = 0
          let variance = 0
          docket.unknowns[k]!.weights.forEach((w, o) => {
            mean += w * answered[o]![of].mean
            variance += w * answered[o]![of].variance
          })
          const means = answered.map((a) => a[of].mean)
          const slack = 1e-9 * unsure[of].mean
          expect(unsure[of].mean / mean).toBeCloseTo(1, 10)
          expect(unsure[of].mean).toBeGreaterThanOrEqual(Math.min(...means) - slack)
          expect(unsure[of].mean).toBeLessThanOrEqual(Math.max(...means) + slack)
          expect(unsure[of].variance).toBeGreaterThanOrEqual(variance * (1 - 1e-9))
        }
      }
    }
  })

  it('by the share that a full recompute over its options gives, in the same order', () => {
    for (const docket of many) {
      for (const of of ['labour', 'price'] as const) {
        const { variance } = moments(docket)[of]
        const recomputed = each(docket).map((k) => {
          let left = 0
          docket.unknowns[k]!.weights.forEach((w, o) => {
            left += w * moments(condition(docket, k, o))[of].variance
          })
          return { unknown: docket.unknowns[k]!.id, share: (variance - left) / variance }
        })
        const got = narrowing(docket, of)
        for (const { unknown, share } of got) {
          expect(share).toBeCloseTo(recomputed.find((r) => r.unknown === unknown)!.share, 9)
        }
        const shares = got.map((g) => g.share)
        expect(shares).toEqual([...shares].sort((a, b) => b - a))
      }
    }
  })

  it('and refuses an option that does not exist', () => {
    const docket = many[0]!
    expect(() => condition(docket, 99, 0)).toThrow(RangeError)
    expect(() => condition(docket, 0, 99)).toThrow(RangeError)
  })
})
