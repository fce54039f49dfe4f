import Decimal from 'decimal.js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { randomDocket } from '../../../tests/montecarlo/random-docket'
import { sumOf, taxOn } from '../../kernel/money'
import { spread } from '../spread'
import {
  bayDayCharge,
  byTimeCap,
  byTimeFinal,
  type DraftLine,
  depositOn,
  discountLines,
  discountOf,
  grossRange,
  offerNet,
  optionDifferences,
  outwardRange,
  shareLines,
  subletCharge,
  travelCharge,
  withMinimumCharge,
} from '.'

const price = (mean: number, high: number) => ({ mean, quantile: () => high })

describe('offer', () => {
  it('takes the percentile, or the mean when that is higher, up to a whole unit', () => {
    expect(offerNet(price(900, 1000.2), 0.72)).toBe(1001)
    expect(offerNet(price(900, 1000), 0.72)).toBe(1000)
    expect(offerNet(price(1200, 1000), 0.72)).toBe(1200)
    expect(() => offerNet(price(1, 1), 0.3)).toThrow(RangeError)
  })

  it('is enough with at least the chance asked for, and never below the mean', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const got = spread(randomDocket(seed))
      const net = offerNet({ mean: got.price.mean, quantile: got.priceQuantile }, 0.72)
      expect(net).toBeGreaterThanOrEqual(got.price.mean)
      expect(got.chancePriceAtMost(net)).toBeGreaterThanOrEqual(0.72 - 1e-9)
      expect(Number.isSafeInteger(net)).toBe(true)
    }
  })

  // Peppol BIS Billing 3.0, rules/examples/Allowance-example.xml, standard-rated part: lines of 4000
  // and 900, 200 off, a charge of 200 (20 % of 1000), 25 %: taxable 4900, tax 1225.
  it('comes to the totals of a published invoice with money off and a charge', () => {
    const lines = [
      { id: '1', amount: 400_000 },
      { id: '3', amount: 90_000 },
    ]
    const less = discountLines(lines, 20_000)
    expect(sumOf(less.map((l) => l.amount))).toBe(470_000)
    expect(discountOf(100_000, 2000, 'half-up')).toBe(20_000)
    const nets = [...less.map((l) => l.amount), 20_000]
    expect(sumOf(nets)).toBe(490_000)
    expect(taxOn(nets, 250_000, 'half-up', 'total')).toBe(122_500)
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

const draft = fc
  .record({
    id: fc.string({ minLength: 1, maxLength: 6 }),
    expected: fc.double({ min: 0, max: 1e6, noNaN: true }),
    cap: fc.option(fc.integer({ min: 1, max: 1e6 }), { nil: undefined }),
  })
  .map(({ cap, ...d }) => (cap === undefined ? d : { ...d, cap }))

describe('lines', () => {
  it('sum to the net exactly, whatever the weights and the order', () => {
    fc.assert(
      fc.property(
        fc.array(draft, { minLength: 1, maxLength: 25 }),
        fc.integer({ min: 0, max: 1e8 }),
        (drafts, net) => {
          const lines = shareLines(net, [...drafts, { id: 'fixed', expected: 1 }])
          expect(sumOf(lines.map((l) => l.amount))).toBe(net)
          expect(lines.map((l) => l.id)).toEqual([...drafts.map((d) => d.id), 'fixed'])
          lines.forEach(({ amount }, i) => {
            expect(amount).toBeGreaterThanOrEqual(0)
            expect(amount).toBeLessThanOrEqual((drafts[i] as DraftLine | undefined)?.cap ?? net)
          })
        },
      ),
    )
  })

  it('by time take no more than their cap, the rest goes to the fixed ones by expected cost', () => {
    const film = { id: 'film', expected: 9600, cap: 9000 }
    const drafts = [{ id: 'wash', expected: 100 }, film, { id: 'polish', expected: 300 }]
    expect(shareLines(29_000, drafts)).toEqual([
      { id: 'wash', amount: 5000 },
      { id: 'film', amount: 9000 },
      { id: 'polish', amount: 15_000 },
    ])
    expect(shareLines(5000, drafts).map((l) => l.amount)).toEqual([50, 4800, 150])
    expect(shareLines(9001, [film])).toEqual([{ id: 'film', amount: 9000 }])
    expect(shareLines(100, [])).toEqual([])
  })

  it.each([
    [30, 3000],
    [90, 9000],
    [91, 9000],
    [300, 9000],
    [0, 0],
    [-5, 0],
    [1, 100],
  ])('by time, %d minutes at 60.00 an hour with a cap of 90 minutes: %d', (minutes, amount) => {
    expect(byTimeCap(6000, 90)).toBe(9000)
    expect(byTimeFinal({ capMinutes: 90, capAmount: 9000 }, minutes)).toBe(amount)
  })

  it('carry a discount without losing a unit or going below zero', () => {
    fc.assert(
      fc.property(
        fc.array(draft, { minLength: 1, maxLength: 20 }),
        fc.integer({ min: 0, max: 1e7 }),
        fc.integer({ min: 0, max: 10_000 }),
        (drafts, net, basisPoints) => {
          const lines = shareLines(net, [...drafts, { id: 'fixed', expected: 1 }])
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
    expect(() => discountLines([{ id: 'a', amount: 10 }], 11)).toThrow(RangeError)
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
