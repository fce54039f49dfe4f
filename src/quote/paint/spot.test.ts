import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { umFromMil } from '../../kernel/lengths'
import { accuracyBand, e376Band, gaugeBias, gaugeInBand, gaugeTypeB, unreadableWhy } from './gauge'
import { discordant, poolSpots, spotOf } from './spot'
import { readingPlan, spotLimits } from './spot-rules'
import type { PaintSet } from './types'

fc.configureGlobal({ seed: 20_260_101 })

describe('type A and type B of one spot (GUM 4.2 and 4.3.7; gauge ±max(1 µm, 3 %))', () => {
  // Type A and B computed apart from this code with exact fractions; Student t one-sided 95 % of two and four
  // degrees 2.9199855804 and 2.1318467863 (NIST/SEMATECH e-Handbook 1.3.6.7.2), normal 1.6448536270.
  it.each([
    [[118, 121, 124], 121, 1.732051, 2.095781, 2.9199855804],
    [[98, 104, 101, 99, 103], 101, 1.140175, 1.749371, 2.1318467863],
  ])('%j', (values, mean, uA, uB, t) => {
    const spot = spotOf(values, {})
    expect(spot.mean).toBe(mean)
    expect(spot.uA).toBeCloseTo(uA, 6)
    const pooled = poolSpots([spot], {})
    expect(pooled.uA).toBeCloseTo((uA * t) / 1.644853627, 5)
    expect(pooled.u).toBeCloseTo(Math.hypot((uA * t) / 1.644853627, uB), 5)
  })
  it('takes a known repeatability over √n without widening', () => {
    const gauge = { repeatabilitySd: 1.5, accuracyPercent: 0, accuracyMin: 0 }
    expect(poolSpots([spotOf([100, 101, 102], gauge)], gauge).u).toBeCloseTo(1.5 / Math.sqrt(3), 12)
  })
  it('widens three readings alone as t of two degrees does: 2.91999 / 1.64485 (NIST e-Handbook)', () => {
    const gauge = { accuracyPercent: 0, accuracyMin: 0 }
    const u = poolSpots([spotOf([99, 100, 101], gauge)], gauge).u
    expect(u).toBeCloseTo((1 / Math.sqrt(3)) * (2.9199855804 / 1.644853627), 6)
  })
})

describe('more readings and worse gauges', () => {
  const thickness = fc.double({ min: 40, max: 300, noNaN: true })
  it('with a fixed repeatability more readings never widen', () => {
    fc.assert(
      fc.property(
        thickness,
        fc.integer({ min: 1, max: 12 }),
        fc.double({ min: 0.1, max: 8, noNaN: true }),
        (t, n, sd) => {
          const gauge = { repeatabilitySd: sd }
          const u = (k: number) => poolSpots([spotOf(Array(k).fill(t), gauge)], gauge).u
          expect(u(n + 1)).toBeLessThanOrEqual(u(n) + 1e-12)
        },
      ),
    )
  })
  it('with a fixed repeatability more spots never widen', () => {
    fc.assert(
      fc.property(thickness, fc.integer({ min: 1, max: 8 }), (t, k) => {
        const gauge = { repeatabilitySd: 2 }
        const u = (spots: number) => poolSpots(Array(spots).fill(spotOf([t, t, t], gauge)), gauge).u
        expect(u(k + 1)).toBeLessThanOrEqual(u(k) + 1e-12)
      }),
    )
  })
  it('a worse gauge never narrows', () => {
    const percent = fc.double({ min: 0, max: 10, noNaN: true })
    fc.assert(
      fc.property(
        fc.array(thickness, { minLength: 1, maxLength: 6 }),
        percent,
        percent,
        (values, a, b) => {
          const u = (accuracyPercent: number) =>
            poolSpots([spotOf(values, { accuracyPercent })], { accuracyPercent }).u
          expect(u(Math.max(a, b))).toBeGreaterThanOrEqual(u(Math.min(a, b)) - 1e-12)
        },
      ),
    )
  })
})

describe('discordance, ASTM B530: any two differ by more than 5 % of the mean or 2 µm, the greater', () => {
  it.each([
    [[118, 121, 124], false],
    [[118, 121, 124.5], true],
    [[20, 21, 22], false],
    [[20, 21, 22.1], true],
    [[100, 105], false],
    [[100, 106], true],
    [[100], false],
  ])('%j → %s', (values, expected) => expect(discordant(values)).toBe(expected))
})

describe('SSPC-PA 2', () => {
  it('spots of an 8-12 mil span may go from 6.4 to 14.4 mil', () => {
    const { low, high } = spotLimits(8, 12)
    expect(low).toBeCloseTo(6.4, 12)
    expect(high).toBeCloseTo(14.4, 12)
  })
  it('12,500 ft² ask for 15 areas, 75 spots, 225 readings', () =>
    expect(readingPlan(12_500)).toEqual({ areas: 15, spots: 75, readings: 225 }))
  it.each([
    [12, 1],
    [100, 1],
    [101, 2],
    [299, 3],
    [300, 3],
    [1000, 3],
    [1001, 4],
    [2000, 4],
    [2001, 5],
  ])('%d ft² → %d areas', (ft2, areas) => expect(readingPlan(ft2).areas).toBe(areas))
})

describe('the gauge', () => {
  it.each([
    [20, 2.5],
    [25, 2.5],
    [25.1, 2.51],
    [120, 12],
  ])('ASTM E376-11 Note 2: at %d µm the band is %d', (um, band) =>
    expect(e376Band(um)).toBeCloseTo(band, 12),
  )
  it.each([
    [20, 1],
    [33, 1],
    [34, 1.02],
    [121, 3.63],
  ])('stated accuracy at %d µm is ±%d', (um, band) =>
    expect(accuracyBand({}, um)).toBeCloseTo(band, 12),
  )
  it('takes the shim bias off and never promises more than its maker', () => {
    const verification = [
      { nominal: 50, read: 52 },
      { nominal: 100, read: 102 },
    ]
    expect(gaugeBias({ verification })).toBe(2)
    expect(spotOf([102, 102, 102], { verification }).mean).toBe(100)
    expect(gaugeTypeB({ verification }, 100)).toBeCloseTo(3 / Math.sqrt(3), 12)
  })
  it('widens by shims that scatter beyond the stated accuracy, and fails outside the E376 band', () => {
    const scattered = {
      verification: [
        { nominal: 100, read: 92 },
        { nominal: 100, read: 108 },
      ],
    }
    expect(gaugeTypeB(scattered, 100)).toBeCloseTo(8 / Math.sqrt(3), 12)
    expect(gaugeInBand(scattered)).toBe(true)
    expect(gaugeInBand({ verification: [{ nominal: 100, read: 110.1 }] })).toBe(false)
    expect(gaugeInBand({ verification: [{ nominal: 20, read: 22.5 }] })).toBe(true)
  })
})

describe('what a probe can read (car-maker service text: no viable reading on composite panels)', () => {
  const set = (probe?: PaintSet['probe']): PaintSet => ({
    panel: 'a',
    kind: 'panel',
    values: [100],
    probe,
  })
  it.each([
    ['plastic', 'magnetic', 'paint.why.unreadable-substrate'],
    ['composite', 'dual', 'paint.why.unreadable-substrate'],
    ['plastic', undefined, 'paint.why.unreadable-substrate'],
    ['plastic', 'ultrasonic', undefined],
    ['aluminium', 'magnetic', 'paint.why.wrong-probe'],
    ['aluminium', 'eddy', undefined],
    ['steel', 'eddy', 'paint.why.wrong-probe'],
    ['galvanised', 'magnetic', undefined],
    ['unknown', 'magnetic', undefined],
  ] as const)('%s with %s → %s', (substrate, probe, code) =>
    expect(unreadableWhy(set(probe), substrate)?.code).toBe(code),
  )
})

// Buick bulletin 86-10-24 (1.4 mil) and Chevrolet bulletin 91-282-10 (0.5 mil); 1 mil = 25.4 µm exactly.
it.each([
  [1.4, 35.56],
  [0.5, 12.7],
  [0.3, 7.62],
])('%d mil is %d µm', (mil, um) => expect(umFromMil(mil)).toBeCloseTo(um, 12))
