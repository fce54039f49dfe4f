import { describe, expect, it } from 'vitest'
import {
  combineUncertainty,
  mean,
  sampleSd,
  studentTQuantile,
  welchSatterthwaite,
  wilsonInterval,
} from './statistics'

describe('GUM (JCGM 100:2008) H.1, end-gauge calibration: components in nm', () => {
  const difference = [
    { u: 5.8, df: 24 },
    { u: 3.9, df: 5 },
    { u: 6.7, df: 8 },
  ]
  const ofDifference = {
    u: combineUncertainty(difference.map((c) => c.u)),
    df: welchSatterthwaite(difference),
  }
  const all = [{ u: 25, df: 18 }, ofDifference, { u: 2.88679, df: 50 }, { u: 16.599, df: 2 }]
  it('u(d) 9.7 with 25.6 degrees in print (25.4 unrounded); uc 32; 16.7 degrees; U99 93 nm', () => {
    expect(ofDifference.u).toBeCloseTo(9.7, 1)
    expect(ofDifference.df).toBeCloseTo(25.447, 2)
    const uc = combineUncertainty(all.map((c) => c.u))
    expect(Math.round(uc)).toBe(32)
    expect(uc).toBeCloseTo(31.66387, 4)
    expect(welchSatterthwaite(all)).toBeCloseTo(16.7519, 3)
    // The printed 93 nm is 2.92 × 32 (value from memory).
    expect(Math.round(studentTQuantile(0.995, 16) * Math.round(uc))).toBe(93)
  })
  it('counts an exactly known component in the sum, not in the degrees', () => {
    expect(welchSatterthwaite([{ u: 2, df: Number.POSITIVE_INFINITY }])).toBe(
      Number.POSITIVE_INFINITY,
    )
    expect(
      welchSatterthwaite([
        { u: 1, df: 4 },
        { u: 1, df: Number.POSITIVE_INFINITY },
      ]),
    ).toBeCloseTo(16, 12)
    expect(() => welchSatterthwaite([{ u: 1, df: 0 }])).toThrow(RangeError)
  })
})

// Type A from three or five readings, type B rectangular a/√3 (GUM 4.3.7, value from memory).
it.each([
  [[118, 121, 124], 3.63, 2.718878, 12.1436],
  [[98, 104, 101, 99, 103], 3.03, 2.088133, 44.9993],
])('a spot of readings %j', (readings, halfWidth, uc, df) => {
  const uA = sampleSd(readings) / Math.sqrt(readings.length)
  const uB = halfWidth / Math.sqrt(3)
  expect(mean(readings) * 0.03).toBeCloseTo(halfWidth, 10)
  expect(combineUncertainty([uA, uB])).toBeCloseTo(uc, 5)
  const parts = [
    { u: uA, df: readings.length - 1 },
    { u: uB, df: Number.POSITIVE_INFINITY },
  ]
  expect(welchSatterthwaite(parts)).toBeCloseTo(df, 3)
})

describe('Wilson score interval', () => {
  // Newcombe, Statistics in Medicine 17 (1998) 857, table I, score method (values from memory).
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%d of %d', (k, n, low, high) => {
    const interval = wilsonInterval(k, n)
    expect(interval.low).toBeCloseTo(low, 4)
    expect(interval.high).toBeCloseTo(high, 4)
  })
  it('is the whole span without data, and touches the end when all succeed', () => {
    expect(wilsonInterval(0, 0)).toEqual({ low: 0, high: 1 })
    expect(wilsonInterval(20, 20).high).toBe(1)
    expect(() => wilsonInterval(3, 2)).toThrow(RangeError)
  })
})
