import { describe, expect, it } from 'vitest'
import { type GuardInput, guardPanel, zoneAllowsMachine } from './guards'
import { defaultSettings as s } from './settings'

const base: GuardInput = {
  facts: { panel: 'a', substrate: 'steel', refinish: 'original' },
  finish: 'clear-coat',
  colour: false,
  year: 2019,
  unknownHistory: false,
  total: 130,
  thinnest: 130,
  believable: 141,
  reference: null,
  fullyCleared: false,
}
const guard = (change: Partial<GuardInput>) => guardPanel({ ...base, ...change }, s)
const withFacts = (change: Partial<GuardInput['facts']>) =>
  guard({ facts: { ...base.facts, ...change } })

// Bands of the total: common practice, no source.
describe('the thinnest spot', () => {
  it.each([
    [69.9, 'glaze', true],
    [70, 'hand', false],
    [79.9, 'hand', false],
    [80, 'light', false],
    [99.9, 'light', false],
    [100, 'cut', false],
  ] as const)('%d µm → %s', (thinnest, reach, stop) => {
    const g = guard({ thinnest })
    expect([g.reach, g.stop]).toEqual([reach, stop])
  })
  it.each([
    [89.9, 'hand'],
    [90, 'light'],
  ] as const)('single stage at %d µm → %s', (thinnest, reach) =>
    expect(guard({ thinnest, colour: true }).reach).toBe(reach),
  )
  it('rules, however good the mean', () =>
    expect(guard({ total: 140, thinnest: 72 }).reach).toBe('hand'))
})

describe('the difference to the reference', () => {
  it.each([
    ['old car, 25 off', { year: 1999, thinnest: 120, reference: 95 }, 'light'],
    ['old car, 25.1 off', { year: 1999, thinnest: 120.1, reference: 95 }, 'cut'],
    ['unknown past, 20 off', { unknownHistory: true, thinnest: 120, reference: 100 }, 'light'],
    ['recent, T 104.9', { thinnest: 104.9, reference: 85 }, 'light'],
    ['recent, T 110, cleared jamb', { thinnest: 110, reference: 100, fullyCleared: true }, 'cut'],
    [
      'recent, T 109.9, cleared jamb',
      { thinnest: 109.9, reference: 100, fullyCleared: true },
      'light',
    ],
    ['recent, T 115, jamb not known', { thinnest: 115, reference: 105 }, 'light'],
    ['old, 9.9 off', { year: 1999, thinnest: 120, reference: 110.1 }, 'hand'],
    ['old, 10 off', { year: 1999, thinnest: 120, reference: 110 }, 'light'],
    ['unknown year, jamb higher', { year: null, thinnest: 110, reference: 130 }, 'hand'],
    ['beyond what a factory sprays', { year: 1990, thinnest: 180, reference: 118 }, 'light'],
    ['no reference', { year: 1990, thinnest: 120 }, 'cut'],
  ] as const)('%s → %s', (_, change, reach) => expect(guard(change).reach).toBe(reach))
  it('caps a recent car with a cleared jamb at 4 µm', () =>
    expect(guard({ thinnest: 118, reference: 110, fullyCleared: true }).cap).toBe(4))
  it('asks whether the jamb was painted', () =>
    expect(guard({ year: 1995, thinnest: 120, reference: 115 }).whys.map((w) => w.code)).toContain(
      'paint.why.jamb-painted-question',
    ))
})

describe('the surface', () => {
  it.each([
    ['peel', withFacts({ peel: true }), 'none', true],
    ['haze', withFacts({ haze: true }), 'none', true],
    ['film', withFacts({ underFilm: true }), 'none', false],
    ['checking', withFacts({ checking: true }), 'glaze', false],
    ['edges through', withFacts({ edgesThrough: true }), 'hand', false],
    ['respray of 89 days', withFacts({ refinish: 'resprayed', refinishAge: 89 }), 'none', true],
    ['respray of 90 days', withFacts({ refinish: 'resprayed', refinishAge: 90 }), 'cut', false],
    ['matte', guard({ finish: 'matte' }), 'none', true],
    ['lacquer', guard({ finish: 'lacquer' }), 'hand', false],
    ['metallic single stage', guard({ finish: 'single-stage-metallic' }), 'glaze', true],
    ['500 µm', guard({ total: 500, thinnest: 500 }), 'cut', false],
    ['501 µm', guard({ total: 501, thinnest: 501 }), 'light', false],
    ['1001 µm', guard({ total: 1001, thinnest: 1001 }), 'glaze', true],
  ] as const)('%s', (_, g, reach, stop) => expect([g.reach, g.stop]).toEqual([reach, stop]))
})

// Edges within 15-25 mm and 15 cm off a blend: common practice, no source.
it.each([
  [25, null, false],
  [25.1, null, true],
  [null, 150, false],
  [null, 150.1, true],
  [40, 100, false],
  [null, null, true],
])('edge at %s mm, blend at %s mm → machine %s', (edge, blend, yes) =>
  expect(zoneAllowsMachine(edge, blend, s)).toBe(yes),
)
