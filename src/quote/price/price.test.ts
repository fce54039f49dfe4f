import Decimal from 'decimal.js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { randomDocket } from '../../../tests/montecarlo/random-docket'
import { sumOf } from '../../kernel/money'
import { spread } from '../spread'
import {
  bayDayCharge,
  byTimeFinal,
  depositOn,
  discountLines,
  discountOf,
  grossRange,
  linesFor,
  offerFrom,
  optionDifferences,
  outwardRange,
  subletCharge,
  travelCharge,
  withMinimumCharge,
} from '.'

const rules = (mean: number, high: number) => ({
  spreadPrice: { mean, quantile: () => high, chanceAtMost: (a: number) => (a >= high ? 0.72 : 0) },
  percentile: 0.72,
  taxRateMillionths: 200_000,
  taxRounding: 'half-up' as const,
  taxBasis: 'total' as const,
  step: 1,
})

describe('offer', () => {
  it('takes the percentile, or the mean when that is higher, up to the step', () => {
    expect(offerFrom(rules(900, 1000.2)).net).toBe(1001)
    expect(offerFrom(rules(1200, 1000)).net).toBe(1200)
    expect(offerFrom({ ...rules(900, 1000.2), step: 500 }).net).toBe(1500)
    expect(offerFrom({ ...rules(900, 1000), step: 500 }).net).toBe(1000)
    expect(() => offerFrom({ ...rules(1, 1), percentile: 0.3 })).toThrow(RangeError)
  })

  // Three lines of 19.99 at 20 %: 12.00 by line, 11.99 on the total (11.994 exactly, half up as in
  // HMRC VATREC12030; item or invoice basis as in SSUTA s. 324).
  it('taxes three lines of 19.99 by line or on the total', () => {
    const total = offerFrom(rules(0, 5997), [1, 1, 1])
    expect(total).toEqual({ net: 5997, tax: 1199, gross: 7196, chanceEnough: 0.72 })
    const byLine = offerFrom({ ...rules(0, 5997), taxBasis: 'line' }, [1, 1, 1])
    expect([byLine.tax, byLine.gross]).toEqual([1200, 7197])
  })

  it('is enough with at least the chance asked for, and never below the mean', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const got = spread(randomDocket(seed))
      const offer = offerFrom({
        ...rules(0, 0),
        spreadPrice: {
          mean: got.price.mean,
          quantile: got.priceQuantile,
          chanceAtMost: got.chancePriceAtMost,
        },
        step: 100,
      })
      expect(offer.net).toBeGreaterThanOrEqual(got.price.mean)
      expect(offer.chanceEnough).toBeGreaterThanOrEqual(0.72 - 1e-9)
      expect(offer.net % 100).toBe(0)
      expect(offer.gross).toBe(offer.net + offer.tax)
    }
  })
})

describe('range', () => {
  it('is rounded outward', () => {
    expect(outwardRange({ low: 41_230.5, likely: 50_249, high: 61_001 }, 500)).toEqual({
      low: 41_000,
      likely: 50_000,
      high: 61_500,
    })
    const amount = fc.integer({ min: 0, max: 1e8 })
    fc.assert(
      fc.property(
        amount,
        amount,
        amount,
        fc.constantFrom(1, 5, 100, 500, 1000),
        (a, b, c, step) => {
          const [low, likely, high] = [a, b, c].sort((x, y) => x - y) as [number, number, number]
          const shown = outwardRange({ low, likely, high }, step)
          expect(shown.low).toBeLessThanOrEqual(low)
          expect(shown.high).toBeGreaterThanOrEqual(high)
          expect(shown.low).toBeGreaterThan(low - step)
          expect(shown.high).toBeLessThan(high + step)
          expect(shown.likely).toBeGreaterThanOrEqual(shown.low)
          expect(shown.likely).toBeLessThanOrEqual(shown.high)
        },
      ),
    )
  })
  it('with tax contains the exact gross amounts', () => {
    const gross = grossRange({ low: 999.6, likely: 1500, high: 2000.2 }, 66_250)
    expect(gross).toEqual({ low: 1065, likely: 1599, high: 2134 })
    expect(new Decimal('999.6').mul('1.06625').toNumber()).toBeGreaterThanOrEqual(gross.low)
    expect(new Decimal('2000.2').mul('1.06625').toNumber()).toBeLessThanOrEqual(gross.high)
  })
})

const draft = fc.record({
  id: fc.string({ minLength: 1, maxLength: 6 }),
  expected: fc.double({ min: 0, max: 1e6, noNaN: true }),
})

describe('lines', () => {
  it('sum to the net exactly, whatever the weights and the order', () => {
    fc.assert(
      fc.property(
        fc.array(draft, { minLength: 1, maxLength: 25 }),
        fc.integer({ min: 0, max: 1e8 }),
        (drafts, net) => {
          const lines = linesFor(net, drafts)
          expect(sumOf(lines.map((l) => l.amount))).toBe(net)
          expect(lines.map((l) => l.id)).toEqual(drafts.map((d) => d.id))
          const turned = linesFor(net, [...drafts].reverse())
          expect(sumOf(turned.map((l) => l.amount))).toBe(net)
          for (const { amount } of lines) expect(amount).toBeGreaterThanOrEqual(0)
        },
      ),
    )
  })

  it('by time take their cap, the rest goes by expected cost', () => {
    const drafts = [
      { id: 'wash', expected: 100 },
      { id: 'film', expected: 9999, byTime: { ratePerHour: 6000, capMinutes: 90 } },
      { id: 'polish', expected: 300 },
    ]
    expect(linesFor(29_000, drafts)).toEqual([
      { id: 'wash', kind: 'fixed', amount: 5000 },
      { id: 'film', kind: 'by-time', amount: 9000 },
      { id: 'polish', kind: 'fixed', amount: 15_000 },
    ])
    expect(() => linesFor(8999, drafts)).toThrow(RangeError)
    expect(() => linesFor(9001, [drafts[1]!])).toThrow(RangeError)
    expect(linesFor(9000, [drafts[1]!])[0]!.amount).toBe(9000)
  })

  it.each([
    [30, 3000],
    [90, 9000],
    [91, 9000],
    [300, 9000],
    [0.005, 1],
  ])('by time, %d minutes at 60.00 an hour with a cap of 90 minutes: %d', (minutes, amount) => {
    expect(byTimeFinal(6000, minutes, 90)).toBe(amount)
  })

  it('carry a discount without losing a unit or going below zero', () => {
    fc.assert(
      fc.property(
        fc.array(draft, { minLength: 1, maxLength: 20 }),
        fc.integer({ min: 0, max: 1e7 }),
        fc.integer({ min: 0, max: 10_000 }),
        (drafts, net, basisPoints) => {
          const lines = linesFor(net, drafts)
          const discount = discountOf(net, basisPoints, 'half-up')
          const after = discountLines(lines, discount)
          expect(sumOf(after.map((l) => l.amount))).toBe(net - discount)
          after.forEach((line, i) => {
            expect(line.amount).toBeGreaterThanOrEqual(0)
            expect(line.amount).toBeLessThanOrEqual(lines[i]!.amount)
          })
        },
      ),
      { numRuns: 300 },
    )
    expect(() => discountLines(linesFor(10, [{ id: 'a', expected: 1 }]), 11)).toThrow(RangeError)
    expect(discountLines([], 0)).toEqual([])
  })
})

describe('charges', () => {
  it.each([
    [10_001, { kind: 'share', basisPoints: 3000, step: 1 } as const, 3000],
    [10_005, { kind: 'share', basisPoints: 3000, step: 1 } as const, 3002],
    [10_001, { kind: 'share', basisPoints: 3000, step: 500 } as const, 3000],
    [400, { kind: 'amount', amount: 500 } as const, 400],
    [900, { kind: 'amount', amount: 500 } as const, 500],
    [900, { kind: 'none' } as const, 0],
  ])('deposit on %d by %j is %d', (gross, rule, deposit) => {
    expect(depositOn(gross, rule, 'half-up')).toEqual({ deposit, balance: gross - deposit })
  })
  it('minimum, travel, bay days and sublet', () => {
    expect(withMinimumCharge(4000, 6000)).toEqual({ net: 6000, raisedBy: 2000 })
    expect(withMinimumCharge(6000, 6000)).toEqual({ net: 6000, raisedBy: 0 })
    expect(travelCharge(10_000, 10_000, 60, 'half-up')).toBe(0)
    expect(travelCharge(12_345, 10_000, 60, 'half-up')).toBe(281)
    expect([
      bayDayCharge(3, 2, 4000),
      bayDayCharge(2, 2, 4000),
      bayDayCharge(2.1, 2, 4000),
    ]).toEqual([4000, 0, 4000])
    expect(subletCharge(12_345, 150_000, 'half-up')).toBe(14_197)
  })
  it('options stand as whole offers with their difference to the base', () => {
    const base = { net: 10_000, gross: 12_000 }
    expect(optionDifferences(base, [{ id: 'b', net: 8000, gross: 9600 }])).toEqual([
      { id: 'b', net: 8000, gross: 9600, netDifference: -2000, grossDifference: -2400 },
    ])
  })
})
