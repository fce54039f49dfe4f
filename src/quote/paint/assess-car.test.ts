import { describe, expect, it } from 'vitest'
import { assessCar, type CarFacts, sequenceById } from './index'
import { jamb, modern, one, panel, spot } from './sample-readings'

const codes = (a: ReturnType<typeof assessCar>, i = 0) => a.panels[i]!.why.map((w) => w.code)

// Common practice, no source.
describe('reference about 79, panel about 101', () => {
  const marks = [
    { class: 'swirls', share: 0.8 },
    { class: 'catches-nail', share: 0.2 },
  ] as const
  const a = one([spot('a', 101), jamb(79)], { defects: marks })
  const p = a.panels[0]!
  it('is about one mil or less of difference: one light step at most', () => {
    expect(p.totalMean! - p.referenceMean!).toBeLessThanOrEqual(25.4)
    expect(p.verdict).toBe('another-set')
    expect(p.strong).toBe(0)
    expect(sequenceById(p.deepest!).level).toBe('light')
    expect(sequenceById(p.deepestByDecision!).level).toBe('light')
  })
  it('takes a share clearly above zero, and says that the deep mark stays', () => {
    expect(a.expectation.low).toBeGreaterThan(0.05)
    expect(a.expectation.mid).toBeGreaterThan(0.2)
    expect(a.expectation.stays).toContain('catches-nail')
  })
  it('does not change its verdict for a deep scratch', () => {
    const deep = one([spot('a', 101), jamb(79)], { defects: [{ class: 'through' }] })
    expect(deep.panels).toEqual(a.panels)
    expect(deep.plannedSequence).toBe(a.plannedSequence)
  })
})

describe('a known topcoat', () => {
  it.each([
    [120, 85, 'another-set', 'light-finish'],
    [110, 85, 'another-set', 'light'],
    [95, 70, 'by-decision', 'hand-finish'],
    [76, null, 'finishing-only', 'hand-finish'],
    [66, null, 'stop', 'hand-glaze'],
    [120, null, 'another-set', 'light'],
    [160, 110, 'topcoat-unknown-test-spot', 'light'],
    [250, null, 'topcoat-unknown-test-spot', 'light'],
  ] as const)('T %d, J %s → %s, %s', (t, j, verdict, deepest) => {
    const p = one(j === null ? [spot('a', t)] : [spot('a', t), jamb(j)]).panels[0]!
    expect([p.verdict, p.deepest]).toEqual([verdict, deepest])
  })
  it('is not cut without a reference, and says so', () => {
    const a = one([spot('a', 130)])
    expect(a.panels[0]!.strong).toBe(0)
    expect(codes(a)).toContain('paint.why.no-reference')
  })
  it('is not cut on a lone reading or a gauge outside its band', () => {
    expect(one([spot('a', 130, { values: [130, 130] }), jamb(90)]).panels[0]!.strong).toBe(0)
    const bad = one([spot('a', 130), jamb(90)], {
      gauge: { verification: [{ nominal: 100, read: 115 }] },
    })
    expect(bad.panels[0]!.strong).toBe(0)
    expect(codes(bad)).toContain('paint.why.gauge-out-of-band')
  })
})

describe('sets that must not count', () => {
  it('never compares across probes or metals', () => {
    const a = assessCar({
      car: modern,
      panels: [panel('a'), panel('door', { substrate: 'aluminium' })],
      readings: [spot('a', 120), jamb(85, { panel: 'door' })],
    })
    expect(a.panels[0]!.referenceMean).toBeNull()
    expect(codes(a)).toContain('paint.why.reference-not-comparable')
  })
  it('flags a discordant set, takes no mean from it, but keeps its thin reading as a guard', () => {
    const a = one([spot('a', 120, { values: [120, 122, 74] })])
    expect(codes(a)).toContain('paint.why.discordant')
    expect(a.panels[0]!.totalMean).toBeNull()
    expect(a.panels[0]!.thinnest).toBe(74)
    expect(a.panels[0]!.verdict).toBe('finishing-only')
  })
  it('takes a set without a spot as a quick map and guards on its thinnest place', () => {
    const p = one([{ panel: 'a', kind: 'panel', values: [118, 121, 97, 119] }, jamb(85)]).panels[0]!
    expect(p.thinnest).toBe(97)
    expect(p.reach).toBe('light')
    expect(p.why.map((w) => w.code)).toContain('paint.why.thin-total-light')
  })
  it('drops impossible values and says so', () => {
    const a = one([spot('a', 120, { values: [120, 0, -3, Number.NaN] })])
    expect(a.panels[0]!.totalMean).toBe(120)
    expect(codes(a)).toContain('paint.why.bad-value')
  })
  it('reads nothing through film', () => {
    const a = one([spot('a', 300, { overFilm: true })])
    expect(a.panels[0]!.verdict).toBe('cannot-be-read')
    expect(a.panels[0]!.deepest).toBeNull()
  })
  it('names the zinc a magnetic probe counts', () =>
    expect(
      codes(one([spot('a', 120)], { panels: [panel('a', { substrate: 'galvanised' })] })),
    ).toContain('paint.why.zinc-counted'))
})

describe('without readings', () => {
  it('promises one light step until somebody has measured', () => {
    const a = one([])
    expect(a.panels[0]!.verdict).toBe('another-set')
    expect(sequenceById(a.allowedSequence!).level).toBe('light')
    expect(a.panels[0]!.strong).toBe(0)
    expect(a.measuredPanels).toBe(0)
    expect(codes(a)).toContain('paint.why.not-measured')
  })
  it('has an answer when even the car is unknown', () => {
    const a = assessCar({ car: { year: null, nowYear: 2026, finish: 'unknown' }, panels: [] })
    expect(sequenceById(a.allowedSequence!).level).toBe('light')
  })
})

// What a careful detailer would say of invented cars: common practice, no source.
describe('whole cars', () => {
  it('1990, single-stage red at 88-96 over 70: one light set, nothing stronger', () => {
    const car: CarFacts = { year: 1990, nowYear: 2026, finish: 'single-stage-solid' }
    const a = assessCar({
      car,
      panels: ['a', 'b', 'c', 'd'].map((id) => panel(id)),
      readings: [spot('a', 89), spot('b', 92), spot('c', 94), spot('d', 96), jamb(70)],
      wish: 'show',
    })
    expect(a.plannedSequence).toBe('gentle')
    expect(a.exceptions).toEqual(['a'])
    expect(a.panels.every((p) => p.strong === 0)).toBe(true)
  })
  it('eight months old, 112-122 over 109: a cleared jamb does not forbid a one-step', () => {
    const a = assessCar({
      car: { year: 2025, nowYear: 2026, finish: 'clear-coat' },
      panels: ['a', 'b', 'c'].map((id) => panel(id)),
      readings: [spot('a', 113), spot('b', 118), spot('c', 122), jamb(109)],
      wish: 'show',
    })
    expect(a.panels.map((p) => p.reach)).toEqual(['cut', 'cut', 'cut'])
    expect(a.panels.every((p) => p.strong <= 4)).toBe(true)
    expect(a.everywhereSequence).toBe('light')
    expect(a.panels[2]!.deepest).toBe('light-finish')
  })
  it('resprayed saloon: thick is not more; filler and peeling roof are left', () => {
    const a = assessCar({
      car: { year: 1975, nowYear: 2026, finish: 'refinished' },
      panels: [
        panel('bonnet', { refinish: 'resprayed' }),
        panel('arch', { refinish: 'resprayed' }),
        panel('roof', { peel: true }),
      ],
      readings: [spot('bonnet', 360), spot('arch', 1300)],
    })
    expect(a.panels.map((p) => p.verdict)).toEqual(['topcoat-unknown-test-spot', 'stop', 'stop'])
    expect(a.panels[0]!.light).toBeLessThanOrEqual(2.5)
    expect(a.panels[0]!.topcoat).toBeNull()
  })
  it('matte is refused, checked lacquer gets a glaze by hand', () => {
    const matte = one([], { car: { ...modern, finish: 'matte' } })
    expect(matte.panels[0]!.verdict).toBe('stop')
    expect(matte.plannedSequence).toBeNull()
    const lacquer = one([spot('a', 78)], {
      car: { year: 1958, nowYear: 2026, finish: 'lacquer' },
      panels: [panel('a', { checking: true })],
    })
    expect(lacquer.panels[0]!.verdict).toBe('finishing-only')
    expect(lacquer.panels[0]!.deepest).toBe('hand-glaze')
  })
  it('one repainted panel stands out against the car', () => {
    const ids = ['a', 'b', 'c', 'd', 'e', 'f']
    const a = assessCar({
      car: modern,
      panels: ids.map((id) => panel(id)),
      readings: ids.map((id, i) => spot(id, i === 5 ? 139 : 104 + i)),
    })
    expect(codes(a, 5)).toContain('paint.why.outlier')
    expect(codes(a, 0)).not.toContain('paint.why.outlier')
    expect(a.panels[5]!.verdict).toBe('topcoat-unknown-test-spot')
  })
  it('no deeper than the wish', () => {
    const readings = [spot('a', 130), jamb(90)]
    const planned = (wish: 'preserve' | 'improve' | 'show') =>
      one(readings, { wish }).plannedSequence
    expect([planned('preserve'), planned('improve')]).toEqual(['gentle', 'light-finish'])
    expect(one(readings, { wish: 'preserve' }).allowedSequence).toBe(
      one(readings, { wish: 'show' }).allowedSequence,
    )
  })
})
