import Decimal from 'decimal.js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { allocate, percentOf, rateOf, sumOf, taxOn, taxWithin } from './money'
import { roundingModes } from './rounding'

describe('tax', () => {
  // Streamlined Sales and Use Tax Agreement s. 324: third decimal above 4 rounds up, item or invoice basis.
  it.each([
    // 1.0046, 1.0050, 1.0049 in currency: only the third decimal decides, and no double rounding.
    [10_046, 10_000, 100],
    [10_050, 10_000, 101],
    [10_049, 10_000, 100],
    [10_044, 10_000, 100],
  ])('SSUTA: %d minor at %d millionths is %d', (amount, rate, tax) => {
    expect(rateOf(amount, rate, 'half-up')).toBe(tax)
  })

  // HMRC VATREC12030: below half a penny down, half a penny and above up.
  it.each([
    [1002, 200_000, 200],
    [1012, 200_000, 202],
    [50, 50_000, 3],
    [49, 50_000, 2],
  ])('VATREC12030: %d pence at %d millionths is %d', (amount, rate, tax) => {
    expect(rateOf(amount, rate, 'half-up')).toBe(tax)
  })

  // Three lines of 19.99: 11.994, 3.9730125, 4.947525 and 4.49775 exactly.
  it.each([
    [200_000, 1200, 1199],
    [66_250, 396, 397],
    [82_500, 495, 495],
    [75_000, 450, 450],
  ])('3 × 19.99 at %d millionths: %d per line, %d on the total', (rate, perLine, onTotal) => {
    const lines = [1999, 1999, 1999]
    expect(taxOn(lines, rate, 'half-up', 'line')).toBe(perLine)
    expect(taxOn(lines, rate, 'half-up', 'total')).toBe(onTotal)
  })

  it('agrees with decimal.js at any rate', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), fc.integer({ min: 0, max: 1e6 }), (a, r) => {
        const exact = new Decimal(a).mul(r).div(1e6).toDecimalPlaces(0, Decimal.ROUND_HALF_UP)
        expect(rateOf(a, r, 'half-up') + 0).toBe(exact.toNumber() + 0)
      }),
    )
  })

  it('contained in a gross amount is a sixth at 20 %', () => {
    expect(taxWithin(12_000, 200_000, 'half-up')).toBe(2000)
    expect(taxWithin(1999, 200_000, 'half-up')).toBe(333)
  })

  it('does not depend on the order of lines', () => {
    const line = fc.integer({ min: -50_000, max: 500_000 })
    fc.assert(
      fc.property(
        fc.array(line),
        fc.integer({ min: 0, max: 300_000 }),
        fc.constantFrom(...roundingModes),
        fc.constantFrom('line' as const, 'total' as const),
        (lines, rate, mode, basis) => {
          const turned = [...lines].reverse()
          expect(taxOn(lines, rate, mode, basis)).toBe(taxOn(turned, rate, mode, basis))
        },
      ),
    )
  })
})

it('a percentage in basis points where floats fail: 5 % of 20.10 and 4.5 % of 23.00', () => {
  // (1.005).toFixed(2) is "1.00" and (1.035).toFixed(2) is "1.03"
  expect(percentOf(2010, 500, 'half-up')).toBe(101)
  expect(percentOf(2300, 450, 'half-up')).toBe(104)
})

describe('allocate', () => {
  it.each([
    [100, [1, 1, 1], [34, 33, 33]],
    [5, [3, 7], [2, 3]],
    [100, [0, 1, 0], [0, 100, 0]],
    [7, [0, 0, 0], [3, 2, 2]],
    [-100, [1, 1, 1], [-34, -33, -33]],
    [0, [2, 3], [0, 0]],
    [10, [0.25, 0.75], [3, 7]],
    [10, [5e-324, 5e-324], [5, 5]],
  ])('%d over %j', (total, weights, shares) => {
    expect(allocate(total, weights)).toEqual(shares)
  })

  it('agrees with the published largest-remainder seats: 100 000 votes, 10 seats', () => {
    // The worked example of the Hare quota and largest remainders: 47 000, 16 000, 15 800, 12 000, 6 100, 3 100.
    expect(allocate(10, [47_000, 16_000, 15_800, 12_000, 6100, 3100])).toEqual([5, 2, 1, 1, 1, 0])
  })

  it('loses nothing and stays within one unit of the exact share', () => {
    const weight = fc.oneof(
      fc.integer({ min: 0, max: 1_000_000 }),
      fc.double({ min: 0, max: 1e6, noNaN: true }).map((w) => (w < 1e-200 ? 0 : w)),
    )
    fc.assert(
      fc.property(
        fc.integer({ min: -1e9, max: 1e9 }),
        fc.array(weight, { minLength: 1, maxLength: 30 }),
        (total, weights) => {
          const shares = allocate(total, weights)
          expect(sumOf(shares)).toBe(total)
          const all = weights.reduce((a, b) => a + b, 0)
          shares.forEach((share, i) => {
            const part = all > 0 ? weights[i]! / all : 1 / weights.length
            expect(Math.abs(share - total * part)).toBeLessThan(1.01)
          })
        },
      ),
    )
  })

  it('throws on what cannot be shared', () => {
    expect(() => allocate(10, [])).toThrow(RangeError)
    expect(() => allocate(10, [1, -1])).toThrow(RangeError)
    expect(() => allocate(1.5, [1])).toThrow(RangeError)
    expect(() => sumOf([0.5])).toThrow(RangeError)
  })
})
