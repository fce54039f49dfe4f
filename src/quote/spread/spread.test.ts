import { describe, expect, it } from 'vitest'
import { plainMonteCarlo, sampleQuantile } from '../../../tests/montecarlo/plain-monte-carlo'
import { randomDocket } from '../../../tests/montecarlo/random-docket'
import { normalCdf, normalQuantile } from '../../kernel/statistics'
import { spread } from './spread'
import type { SpreadInput } from './spread-input'

const nothing = { optimistic: 0, mode: 0, pessimistic: 0 }
const exactly = (value: number) => ({ optimistic: value, mode: value, pessimistic: value })
const plain = (over: Partial<SpreadInput>): SpreadInput => ({
  items: [],
  unknowns: [],
  carSd: 0,
  fixedMoney: 0,
  minimumMoney: 0,
  ...over,
})
const step = (id: string, minutes: number, money = 0, chance = 1) => ({
  id,
  ratePerHour: 6000,
  cases: [{ when: [], chance, minutes: exactly(minutes), money: exactly(money) }],
})

// The yardstick is a plain Monte Carlo that shares no code with the spread.
describe('percentiles within 1 % of 200 000 plain draws', () => {
  it.each(Array.from({ length: 20 }, (_, i) => i + 1))('made-up car %d', (seed) => {
    const docket = randomDocket(seed)
    const drawn = plainMonteCarlo(docket, 200_000, 1000 + seed)
    const got = spread(docket)
    for (const p of [0.1, 0.5, 0.9]) {
      const labour = sampleQuantile(drawn.labour, p)
      const price = sampleQuantile(drawn.price, p)
      expect(Math.abs(got.labourQuantile(p) / labour - 1)).toBeLessThan(0.01)
      expect(Math.abs(got.priceQuantile(p) / price - 1)).toBeLessThan(0.01)
      expect(Math.abs(got.chanceLabourAtMost(labour) - p)).toBeLessThan(0.01)
      if (price > docket.minimumMoney) {
        expect(Math.abs(got.chancePriceAtMost(price) - p)).toBeLessThan(0.01)
      }
    }
    const mean = drawn.price.reduce((a, b) => a + b, 0) / drawn.price.length
    const square = drawn.price.reduce((a, b) => a + (b - mean) * (b - mean), 0)
    expect(Math.abs(got.price.mean / mean - 1)).toBeLessThan(0.005)
    expect(Math.abs(got.price.sd / Math.sqrt(square / drawn.price.length) - 1)).toBeLessThan(0.02)
  })
})

describe('closed cases', () => {
  it('constant steps and no factor: one value, with the minimum as its floor', () => {
    const input = plain({ items: [step('a', 30), step('b', 90, 500)], fixedMoney: 1000 })
    const sure = spread(input)
    expect(sure.labour).toEqual({ p10: 120, p50: 120, p80: 120, p90: 120, mean: 120, sd: 0 })
    expect(sure.price).toEqual({ p10: 13_500, p50: 13_500, p90: 13_500, mean: 13_500, sd: 0 })
    expect([sure.chanceLabourAtMost(119.99), sure.chanceLabourAtMost(120)]).toEqual([0, 1])
    const raised = spread({ ...input, minimumMoney: 20_000 })
    expect(raised.price).toEqual({ p10: 20_000, p50: 20_000, p90: 20_000, mean: 20_000, sd: 0 })
    expect([raised.chancePriceAtMost(19_999), raised.chancePriceAtMost(20_000)]).toEqual([0, 1])
  })

  it('constant steps under the car factor: the lognormal itself', () => {
    const got = spread(plain({ items: [step('a', 100)], carSd: 0.3 }))
    const exact = (p: number) => 100 * Math.exp(0.3 * normalQuantile(p) - 0.045)
    for (const p of [0.02, 0.1, 0.25, 0.5, 0.8, 0.9, 0.98]) {
      expect(Math.abs(got.labourQuantile(p) / exact(p) - 1)).toBeLessThan(0.004)
    }
    expect(got.labour.mean).toBeCloseTo(100, 9)
    expect(got.labour.sd).toBeCloseTo(100 * Math.sqrt(Math.exp(0.09) - 1), 9)
    const below = normalCdf((Math.log(1.2) + 0.045) / 0.3)
    expect(Math.abs(got.chanceLabourAtMost(120) - below)).toBeLessThan(0.003)
  })

  it('one event of 30 % beside a sure step: two values', () => {
    const got = spread(plain({ items: [step('sure', 60), step('maybe', 100, 700, 0.3)] }))
    expect(got.labour.p50).toBeCloseTo(60, 0)
    expect(got.labour.p80).toBeCloseTo(160, 0)
    expect(got.chanceLabourAtMost(110)).toBeCloseTo(0.7, 3)
    expect(got.labour.mean).toBeCloseTo(90, 9)
    expect(got.price.mean).toBeCloseTo(9000 + 210, 9)
  })

  it('a minimum lifts the mean to the exact mean of max(minimum, price)', () => {
    // E max(k, X) of a lognormal X with mean m: k Φ(d) + m Φ(s − d), d = (ln(k/m) + s²/2) / s.
    const s = 0.3
    const d = (Math.log(11_000 / 10_000) + (s * s) / 2) / s
    const exact = 11_000 * normalCdf(d) + 10_000 * normalCdf(s - d)
    const got = spread(plain({ items: [step('a', 100)], carSd: s, minimumMoney: 11_000 }))
    expect(Math.abs(got.price.mean / exact - 1)).toBeLessThan(0.001)
    expect(got.price.p10).toBe(11_000)
  })
})

describe('laws', () => {
  const dockets = Array.from({ length: 25 }, (_, i) => randomDocket(300 + i))
  it('percentiles are ordered and the chance undoes the quantile', () => {
    for (const docket of dockets) {
      const got = spread(docket)
      const at = [0, 0.01, 0.1, 0.3, 0.5, 0.72, 0.9, 0.99, 1]
      for (const quantile of [got.labourQuantile, got.priceQuantile]) {
        const values = at.map(quantile)
        expect(values).toEqual([...values].sort((a, b) => a - b))
      }
      expect(got.price.p10).toBeGreaterThanOrEqual(docket.minimumMoney)
      for (const p of [0.1, 0.5, 0.9]) {
        expect(got.chanceLabourAtMost(got.labourQuantile(p))).toBeCloseTo(p, 9)
      }
    }
  })
  it('equal inputs give equal output, whatever was computed between', () => {
    const first = dockets.map((d) => JSON.stringify(spread(d)))
    spread({ ...dockets[0]!, points: 4096 })
    expect([...dockets].reverse().map((d) => JSON.stringify(spread(d)))).toEqual(first.reverse())
  })
  it('double minutes are double labour', () => {
    const docket = randomDocket(7)
    const twice = (t: typeof nothing) => ({
      optimistic: 2 * t.optimistic,
      mode: 2 * t.mode,
      pessimistic: 2 * t.pessimistic,
    })
    const doubled = docket.items.map((i) => ({
      ...i,
      cases: i.cases.map((c) => ({ ...c, minutes: twice(c.minutes) })),
    }))
    const ratio = spread({ ...docket, items: doubled }).labour.p90 / spread(docket).labour.p90
    expect(ratio).toBeCloseTo(2, 9)
  })
})

describe('ill-formed input throws', () => {
  const unknown = { id: 'film', weights: [0.5, 0.5], carSd: 0 }
  const leaf = (option: number) => ({
    when: [[0, 1 << option]] as const,
    chance: 1,
    minutes: exactly(1),
    money: nothing,
  })
  it.each([
    ['a gap', plain({ unknowns: [unknown], items: [{ ...step('a', 1), cases: [leaf(0)] }] })],
    [
      'an overlap',
      plain({
        unknowns: [unknown],
        items: [{ ...step('a', 1), cases: [leaf(0), leaf(1), leaf(1)] }],
      }),
    ],
    [
      'no such option',
      plain({ unknowns: [unknown], items: [{ ...step('a', 1), cases: [leaf(2)] }] }),
    ],
    ['weights', plain({ unknowns: [{ ...unknown, weights: [0.5, 0.4] }] })],
    ['a chance', plain({ items: [step('a', 1, 0, 1.1)] })],
    ['a negative time', plain({ items: [step('a', -1)] })],
    ['points', plain({ points: 1000 })],
  ])('%s', (_name, input) => {
    expect(() => spread(input)).toThrow(RangeError)
  })
})
