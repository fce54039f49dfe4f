import { describe, expect, it } from 'vitest'
import { ft2FromM2, kmFromMiles, m2FromFt2, milesFromKm, milFromUm, umFromMil } from './lengths'

// International yard and pound agreement (1959): 1 in = 25.4 mm exactly.
it.each([
  [0.3, 7.62],
  [0.5, 12.7],
  [1, 25.4],
  [1.4, 35.56],
  [4, 101.6],
  [5, 127],
])('%d mil is %d µm', (mil, um) => {
  expect(umFromMil(mil)).toBeCloseTo(um, 12)
  expect(milFromUm(um)).toBeCloseTo(mil, 12)
})

it('100 µm is 3.937007874 mil', () => {
  expect(milFromUm(100)).toBeCloseTo(3.937007874, 9)
})

describe('conversions seen wrong in print', () => {
  it('2.5–3 µm is 0.098–0.118 mil, not 0.98–0.12', () => {
    expect(milFromUm(2.5)).toBeCloseTo(0.098, 3)
    expect(milFromUm(3)).toBeCloseTo(0.118, 3)
    expect(milFromUm(2.5)).not.toBeCloseTo(0.98, 1)
  })
  it('1.5–2 mil is 0.0381–0.0508 mm, not 0.059–0.078', () => {
    expect(umFromMil(1.5) / 1000).toBeCloseTo(0.0381, 6)
    expect(umFromMil(2) / 1000).toBeCloseTo(0.0508, 6)
    expect(umFromMil(2) / 1000).not.toBeCloseTo(0.078, 2)
  })
  it('0.5 mil is 0.0005 in, not 0.019', () => {
    expect(umFromMil(0.5) / 25_400).toBeCloseTo(0.0005, 9)
  })
})

// NIST Handbook 44, appendix C: 1 mi = 1.609344 km exactly; 10 ft² = 0.929 030 4 m².
it('miles and square feet', () => {
  expect(kmFromMiles(1)).toBe(1.609344)
  expect(milesFromKm(1.609344)).toBe(1)
  expect(kmFromMiles(26.21875)).toBeCloseTo(42.195, 3)
  expect(m2FromFt2(10)).toBeCloseTo(0.9290304, 12)
  expect(ft2FromM2(1)).toBeCloseTo(10.76391, 5)
})
