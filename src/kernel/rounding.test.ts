import Decimal from 'decimal.js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type RoundingMode, roundingModes, roundProduct, roundRatio, roundToStep } from './rounding'

// Java SE 8, class RoundingMode, summary table; inputs in tenths.
const inputs = [55, 25, 16, 11, 10, -10, -11, -16, -25, -55]
const table: Record<RoundingMode, number[]> = {
  'half-up': [6, 3, 2, 1, 1, -1, -1, -2, -3, -6],
  'half-even': [6, 2, 2, 1, 1, -1, -1, -2, -2, -6],
  'half-down': [5, 2, 2, 1, 1, -1, -1, -2, -2, -5],
  up: [6, 3, 2, 2, 1, -1, -2, -2, -3, -6],
  down: [5, 2, 1, 1, 1, -1, -1, -1, -2, -5],
  ceiling: [6, 3, 2, 2, 1, -1, -1, -1, -2, -5],
  floor: [5, 2, 1, 1, 1, -1, -2, -2, -3, -6],
}

const decimalModes: Record<RoundingMode, Decimal.Rounding> = {
  'half-up': Decimal.ROUND_HALF_UP,
  'half-even': Decimal.ROUND_HALF_EVEN,
  'half-down': Decimal.ROUND_HALF_DOWN,
  up: Decimal.ROUND_UP,
  down: Decimal.ROUND_DOWN,
  ceiling: Decimal.ROUND_CEIL,
  floor: Decimal.ROUND_FLOOR,
}

describe.each(roundingModes)('%s', (mode) => {
  it('follows the published table', () => {
    expect(inputs.map((v) => roundRatio(v, 10, mode))).toEqual(table[mode])
  })
  it('agrees with decimal.js on amounts, halves included', () => {
    const amount = fc.oneof(fc.integer({ min: -2000, max: 2000 }), fc.maxSafeInteger())
    fc.assert(
      fc.property(amount, fc.constantFrom(2, 4, 8, 10, 1000, 10_000, 1_000_000), (n, d) => {
        const exact = new Decimal(n).div(d).toDecimalPlaces(0, decimalModes[mode]).toNumber()
        expect(roundRatio(n, d, mode) + 0).toBe(exact + 0)
      }),
    )
  })
})

it('stays exact where the product passes the safe range', () => {
  expect(roundProduct(9_007_199_254_740_991, 66_250, 1_000_000, 'half-up')).toBe(
    596_726_950_626_591,
  )
  expect(() => roundProduct(9_007_199_254_740_991, 3, 1, 'down')).toThrow(RangeError)
  expect(() => roundProduct(1.5, 3, 1, 'down')).toThrow(RangeError)
  expect(() => roundRatio(1, 0, 'down')).toThrow(RangeError)
})

it('rounds to a step', () => {
  expect(roundToStep(1234, 500, 'floor')).toBe(1000)
  expect(roundToStep(1234, 500, 'ceiling')).toBe(1500)
  expect(roundToStep(1250, 500, 'half-even')).toBe(1000)
  expect(roundToStep(1500, 500, 'ceiling')).toBe(1500)
})
