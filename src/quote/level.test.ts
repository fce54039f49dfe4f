import { describe, expect, it } from 'vitest'
import type { Answers } from '../intake/answers'
import type { Adjustment } from './adjustment'
import { type EstimateInput, estimate } from './estimate'
import { DEFAULT_PROFILE, engineSettings } from './studio-profile'

const answers: Answers = {
  body: { value: 'saloon' },
  size: { value: 'mid' },
  dangers: { value: [] },
  year: { value: 2018 },
  services: { value: ['paint'] },
  wish: { value: 'improve' },
  'paint-history': { value: 'original' },
  colour: { value: 'mid' },
}
const settings = engineSettings(DEFAULT_PROFILE, 1, [])
const why = 'seen at the door'
const made = (adjustments: readonly Adjustment[], more: Partial<EstimateInput> = {}) =>
  estimate({ answers, settings, today: '2026-06-01', readings: [], adjustments, ...more })
const places = (e: ReturnType<typeof made>, step: string): readonly string[] =>
  e.steps.find((s) => s.id === step)?.places ?? []

describe('level', () => {
  it('of one panel takes it out of the others’ work and leaves the rest alone', () => {
    const before = made([])
    const after = made([{ kind: 'level', panel: 'bonnet', level: 'hand', why }])
    expect(places(before, 'polish-light')).toContain('bonnet')
    expect(places(after, 'polish-hand')).toEqual(['bonnet'])
    expect(places(after, 'polish-light')).toEqual(
      places(before, 'polish-light').filter((p) => p !== 'bonnet'),
    )
    const wash = (e: ReturnType<typeof made>) => e.steps.find((s) => s.id === 'wash')?.minutes
    expect(wash(after)).toEqual(wash(before))
  })

  it('of the whole car deepens or ends the polishing, and a panel’s own choice stands', () => {
    const deep = made([{ kind: 'level', level: 'two-step', why }])
    expect(deep.labourMinutes.mean).toBeGreaterThan(made([]).labourMinutes.mean)
    const none = made([
      { kind: 'level', level: 'none', why },
      { kind: 'level', panel: 'roof', level: 'finishing', why },
    ])
    expect(places(none, 'polish-light')).toEqual([])
    expect(places(none, 'polish-finishing')).toEqual(['roof'])
  })

  it('never goes deeper than the readings allow, whoever chooses', () => {
    const readings = [{ panel: 'bonnet', kind: 'panel', values: [66, 67, 66], probe: 'dual' }]
    const given = { readings: readings as EstimateInput['readings'] }
    const deep = made([{ kind: 'level', panel: 'bonnet', level: 'two-step', why }], given)
    for (const step of ['polish-cut', 'polish-light', 'polish-finishing'])
      expect(places(deep, step), step).not.toContain('bonnet')
  })

  it('is listed as no longer applying once the panel or the polishing is gone', () => {
    const wrong: Adjustment = { kind: 'level', panel: 'cargo-bed', level: 'light', why }
    expect(made([wrong]).adjusted).toEqual({ applied: [], dropped: [wrong] })
    const cabin = { ...answers, services: { value: ['cabin'] } }
    const light: Adjustment = { kind: 'level', level: 'light', why }
    expect(made([light], { answers: cabin }).adjusted.dropped).toEqual([light])
  })
})

describe('start', () => {
  it('moves the plan to the day, until that day has passed', () => {
    const start: Adjustment = { kind: 'start', day: '2026-06-10', why }
    const then = made([start])
    expect(then.plan.start).toBe('2026-06-10')
    expect(then.price).toEqual(made([]).price)
    const late = made([start], { today: '2026-06-11' })
    expect(late.adjusted.dropped).toEqual([start])
    expect(late.plan.start).toBe('2026-06-12')
  })
})
