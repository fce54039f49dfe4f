import { describe, expect, it } from 'vitest'
import { expectationOf, shareRemoved } from './expectation'
import { removedBefore, removedInJob } from './removed'
import {
  removal95,
  removalFactor,
  removalOf,
  sequenceById,
  sequences,
  stepRemoval,
} from './sequences'
import { defaultSettings as s } from './settings'
import { defectClasses } from './types'

describe('removal of a sequence', () => {
  it('a microfibre cut and a finish: 4.0 ± 1.237, 95 % of the sum at 6.03 µm', () => {
    const r = removalOf(sequenceById('two-step').steps)
    expect(r.mean).toBeCloseTo(4, 12)
    expect(r.sd).toBeCloseTo(Math.sqrt(1.2 * 1.2 + 0.3 * 0.3), 12)
    expect(removal95(sequenceById('two-step').steps)).toBeCloseTo(4 + 1.6448536 * r.sd, 6)
  })
  it('sanding never fits the default cap', () => {
    expect(removal95(sequenceById('sand').steps)).toBeGreaterThan(10)
    expect(removal95(sequenceById('sand').steps)).toBeGreaterThan(s.lifetimeCap)
  })
  it('is ordered, mildest first', () => {
    const all = sequences.map((q) => removal95(q.steps))
    expect([...all].sort((a, b) => a - b)).toEqual(all)
  })
  // Common practice, no source: finishing 0.5 µm or less, light 1-2, a rotary with medium polish 2.5-3, wool 3-8.
  it.each([
    ['finish', 0, 0.5],
    ['light', 1, 2],
    ['cut-foam', 2, 3],
    ['cut-microfibre', 3, 5],
    ['cut-wool', 3, 8],
    ['sand-3000', 1, 3],
    ['sand-2000', 3, 6],
  ] as const)('%s lies in %d-%d µm', (step, low, high) => {
    expect(stepRemoval[step].mean).toBeGreaterThanOrEqual(low)
    expect(stepRemoval[step].mean).toBeLessThanOrEqual(high)
  })
  it.each([
    [false, 0, 1],
    [true, 0, 1.5],
    [false, 1, 1.5],
    [true, 1, 2],
    [false, 0.5, 1.25],
  ])('soft %s, colour coat %d → × %d', (soft, colour, factor) =>
    expect(removalFactor(soft, colour, s)).toBeCloseTo(factor, 12),
  )
})

describe('removed before this job (own estimate: 1 new, 3 at five years, 5 beyond fifteen)', () => {
  const car = { nowYear: 2026, finish: 'clear-coat' } as const
  it.each([
    [{ ...car, year: 2026 }, 1],
    [{ ...car, year: 2021 }, 3],
    [{ ...car, year: 2016 }, 4],
    [{ ...car, year: 2011 }, 5],
    [{ ...car, year: 1980 }, 5],
    [{ ...car, year: null }, 5],
    [{ ...car, year: 2026, shown: true }, 5],
    [{ ...car, year: 2026, ownersMany: true }, 5],
    [{ ...car, year: 1980, documentedRemovedUm: 0.5 }, 0.5],
    [{ ...car, year: 2030 }, 1],
  ])('%j → %d µm', (facts, um) => expect(removedBefore(facts)).toBe(um))
})

describe('removed in this job', () => {
  const one = { mean: 120, u: 2.6, uA: 1.2 }
  it('is the counted sets at their upper value without a pair of readings', () => {
    const r = removedInJob([{ step: 'light', sets: 2 }], 1, null, null)
    expect(r.counted).toBeCloseTo(2.6 + 1.6448536 * Math.sqrt(0.32), 6)
    expect(r.um).toBe(r.counted)
    expect(r.resolved).toBe(false)
  })
  it('is the measured upper bound when that is larger, and says when the gauge cannot tell', () => {
    const r = removedInJob([{ step: 'finish', sets: 1 }], 1, one, { ...one, mean: 119 })
    expect(r.um).toBeCloseTo(1 + 1.6448536 * 1.2 * Math.SQRT2, 6)
    expect(r.resolved).toBe(false)
    expect(removedInJob([], 1, one, { ...one, mean: 116 }).resolved).toBe(true)
  })
  it('one pair of three readings of 2 µm spread resolves about ± 3 µm (common practice, no source)', () => {
    const uA = 2 / Math.sqrt(3)
    const r = removedInJob([], 1, { mean: 120, u: 3, uA }, { mean: 120, u: 3, uA })
    expect(r.um).toBeGreaterThan(2)
    expect(r.um).toBeLessThan(3.5)
  })
})

describe('what a sequence takes of the marks', () => {
  const mid = (um: number, kind: (typeof defectClasses)[number]) =>
    shareRemoved(kind, { mean: um, sd: 0 }).mid
  it('a one-step takes 50-70 % of wash marks (value from memory)', () => {
    const { mid: share } = expectationOf(removalOf(sequenceById('light').steps), [])
    expect(share).toBeGreaterThan(0.5)
    expect(share).toBeLessThan(0.7)
  })
  it('5 µm take 90 % of a mixed car and the next 5 µm another 5 % (a practitioner in public)', () => {
    const mix = [
      { class: 'swirls', share: 0.7 },
      { class: 'light', share: 0.2 },
      { class: 'catches-nail', share: 0.1 },
    ] as const
    expect(expectationOf({ mean: 5, sd: 0 }, mix).mid).toBeCloseTo(0.9, 1)
    expect(expectationOf({ mean: 10, sd: 0 }, mix).mid).toBeCloseTo(0.95, 1)
    const gain =
      expectationOf({ mean: 10, sd: 0 }, mix).mid - expectationOf({ mean: 5, sd: 0 }, mix).mid
    expect(gain).toBeGreaterThan(0.03)
    expect(gain).toBeLessThan(0.08)
  })
  it('grows with removal and falls with depth, low ≤ mid ≤ high', () => {
    for (const um of [0.2, 0.8, 1.3, 4, 9]) {
      const shares = defectClasses.map((kind) => mid(um, kind))
      expect([...shares].sort((a, b) => b - a)).toEqual(shares)
      for (const kind of defectClasses) {
        expect(mid(um + 0.5, kind)).toBeGreaterThanOrEqual(mid(um, kind))
        const r = shareRemoved(kind, { mean: um, sd: um / 4 })
        expect(r.low).toBeLessThanOrEqual(r.mid)
        expect(r.mid).toBeLessThanOrEqual(r.high)
      }
    }
  })
  it('names what stays: a mark through the clear is never promised', () => {
    const e = expectationOf(removalOf(sequenceById('sand').steps), [
      { class: 'swirls' },
      { class: 'through' },
    ])
    expect(e.stays).toEqual(['through'])
  })
})
