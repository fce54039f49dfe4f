import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type LimitKey, limits } from './constants'
import { clampSettings, defaultSettings } from './settings'

fc.configureGlobal({ seed: 20_260_101 })

describe('studio overrides inside hard limits', () => {
  it.each([
    // Chevrolet bulletin 91-282-10: 0.5 mil; Buick bulletin 86-10-24: 1.4 mil of clear must remain.
    ['lifetimeCap', 20, 12.7],
    ['lifetimeCap', 6, 6],
    ['floorClear', 20, 35.56],
    ['floorClear', 40, 40],
    ['lightQuantile', 0.5, 0.2],
    ['strongQuantile', 0.5, 0.05],
    ['thinStop', 50, 70],
    ['decisionFloor', 10, 30],
    ['gateP', 0.001, 0.01],
  ] as const)('%s %d → %d', (key, asked, used) => {
    const { settings, clamped } = clampSettings({ [key]: asked })
    expect(settings[key]).toBe(used)
    expect(clamped.filter((c) => c.key === key)).toEqual(
      asked === used ? [] : [{ key, asked, used }],
    )
  })
  it('never lets the job cap pass the lifetime cap', () =>
    expect(clampSettings({ jobCap: 5, lifetimeCap: 3 }).settings.jobCap).toBe(3))
  it('falls back to the default for a value that is no number, and says so', () => {
    const { settings, clamped } = clampSettings({ jobCap: Number.NaN })
    expect(settings.jobCap).toBe(5)
    expect(clamped).toHaveLength(1)
  })
  it('keeps its own defaults and every override inside', () => {
    expect(clampSettings().clamped).toEqual([])
    const keys = Object.keys(limits) as LimitKey[]
    for (const key of keys) {
      expect(defaultSettings[key]).toBe(limits[key].value)
      expect(limits[key].source.length).toBeGreaterThan(3)
    }
    fc.assert(
      fc.property(fc.constantFrom(...keys), fc.double(), (key, asked) => {
        const used = clampSettings({ [key]: asked }).settings[key]
        expect(used).toBeGreaterThanOrEqual(limits[key].hardMin)
        expect(used).toBeLessThanOrEqual(limits[key].hardMax)
      }),
    )
  })
})
