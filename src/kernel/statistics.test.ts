import { describe, expect, it } from 'vitest'
import { mad, mean, median, sampleSd } from './statistics'

// NIST StRD, univariate summary statistics (public domain): certified values and data.
const alternating = (base: number): number[] => [
  base + 0.2,
  ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? base + 0.1 : base + 0.3)),
]

const MAVRO =
  '2.00180 2.00170 2.00180 2.00190 2.00180 2.00170 2.00150 2.00140 2.00150 2.00150 2.00170 2.00180 2.00180 2.00190 2.00190 2.00210 2.00200 2.00160 2.00140 2.00130 2.00130 2.00150 2.00150 2.00160 2.00150 2.00140 2.00130 2.00140 2.00150 2.00140 2.00150 2.00160 2.00150 2.00160 2.00190 2.00200 2.00200 2.00210 2.00220 2.00230 2.00240 2.00250 2.00270 2.00260 2.00260 2.00260 2.00270 2.00260 2.00250 2.00240'
const MICHELSO =
  '299.85 299.74 299.90 300.07 299.93 299.85 299.95 299.98 299.98 299.88 300.00 299.98 299.93 299.65 299.76 299.81 300.00 300.00 299.96 299.96 299.96 299.94 299.96 299.94 299.88 299.80 299.85 299.88 299.90 299.84 299.83 299.79 299.81 299.88 299.88 299.83 299.80 299.79 299.76 299.80 299.88 299.88 299.88 299.86 299.72 299.72 299.62 299.86 299.97 299.95 299.88 299.91 299.85 299.87 299.84 299.84 299.85 299.84 299.84 299.84 299.89 299.81 299.81 299.82 299.80 299.77 299.76 299.74 299.75 299.76 299.91 299.92 299.89 299.86 299.88 299.72 299.84 299.85 299.85 299.78 299.89 299.84 299.78 299.81 299.76 299.81 299.79 299.81 299.82 299.85 299.87 299.87 299.81 299.74 299.81 299.94 299.95 299.80 299.81 299.87'
const numbers = (text: string): number[] => text.trim().split(/\s+/).map(Number)

const relative = (got: number, want: number): number => Math.abs(got - want) / Math.abs(want)

describe('NIST StRD certified means and standard deviations', () => {
  it.each([
    ['NumAcc1', [10000001, 10000003, 10000002], 3, 10000002, 1, 1e-12],
    ['NumAcc2', alternating(1), 1001, 1.2, 0.1, 1e-12],
    // The decimal input itself is only good to about 1e-9 of the spread in a double.
    ['NumAcc3', alternating(1000000), 1001, 1000000.2, 0.1, 1e-8],
    ['NumAcc4', alternating(10000000), 1001, 10000000.2, 0.1, 1e-8],
    ['Mavro', numbers(MAVRO), 50, 2.001856, 0.000429123454003053, 1e-12],
    ['Michelso', numbers(MICHELSO), 100, 299.8524, 0.0790105478190518, 1e-12],
  ] as const)('%s', (_name, data, n, centre, sd, tolerance) => {
    expect(data.length).toBe(n)
    expect(relative(mean(data), centre)).toBeLessThan(1e-14)
    expect(relative(sampleSd(data), sd)).toBeLessThan(tolerance)
  })

  it('keeps what a one-pass sum of squares loses on NumAcc3', () => {
    const data = alternating(1000000)
    let sum = 0
    let squares = 0
    for (const v of data) {
      sum += v
      squares += v * v
    }
    const onePass = Math.sqrt((squares - (sum * sum) / data.length) / (data.length - 1))
    expect(relative(onePass, 0.1)).toBeGreaterThan(0.01)
    expect(relative(sampleSd(data), 0.1)).toBeLessThan(1e-8)
  })
})

describe('GUM (JCGM 100:2008) 4.4.3, Table 1: twenty temperatures (data from memory, printed results)', () => {
  const temperatures = numbers(
    '96.90 98.18 98.25 98.61 99.03 99.49 99.56 99.74 99.89 100.07 100.33 100.42 100.68 100.95 101.11 101.20 101.57 101.84 102.36 102.72',
  )
  it('mean 100.145, s 1.489, s/√n 0.333', () => {
    expect(mean(temperatures)).toBeCloseTo(100.145, 10)
    expect(sampleSd(temperatures)).toBeCloseTo(1.489, 3)
    expect(sampleSd(temperatures) / Math.sqrt(20)).toBeCloseTo(0.333, 3)
  })
})

describe('median and mad', () => {
  it.each([
    [[7], 7, 0],
    [[3, 1], 2, 1],
    // The textbook example of the median absolute deviation: median 2, distances 1 1 0 0 2 4 7, mad 1.
    [[1, 1, 2, 2, 4, 6, 9], 2, 1],
    [[100, 9, 8], 9, 1],
  ])('%j', (data, middle, spread) => {
    const before = [...data]
    expect(median(data)).toBe(middle)
    expect(mad(data)).toBe(spread)
    expect(data).toEqual(before)
  })
})

it('refuses what has no value', () => {
  expect(() => mean([])).toThrow(RangeError)
  expect(() => median([])).toThrow(RangeError)
  expect(() => sampleSd([4])).toThrow(RangeError)
})
