import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type LimitKey, limits } from './constants'
import {
  assessCar,
  type CarFacts,
  finishSystems,
  type PaintSet,
  panelSubstrates,
  probes,
} from './index'

// The same cases on every run.
fc.configureGlobal({ seed: 20_260_101 })

const um = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const cars: fc.Arbitrary<CarFacts> = fc.record({
  year: fc.option(fc.integer({ min: 1950, max: 2026 })),
  nowYear: fc.constant(2026),
  finish: fc.constantFrom(...finishSystems),
  shown: fc.boolean(),
  unknownHistory: fc.boolean(),
  fullyClearedJambKnown: fc.boolean(),
  documentedRemovedUm: fc.option(um(0, 15)),
})
const clear: fc.Arbitrary<CarFacts> = cars.map((c) => ({ ...c, finish: 'clear-coat' }))
const facts = { panel: 'a', substrate: 'steel', refinish: 'original' } as const
const total = (t: number): PaintSet => ({ panel: 'a', kind: 'panel', values: [t, t, t], spot: '1' })
const jamb = (t: number): PaintSet => ({ panel: 'j', kind: 'reference', values: [t, t, t] })
const settingsAny = fc.dictionary(
  fc.constantFrom(...(Object.keys(limits) as LimitKey[])),
  fc.double({ min: -1000, max: 1000, noNaN: true }),
)
const judge = (car: CarFacts, readings: readonly PaintSet[], settings = {}) =>
  assessCar({ car, panels: [facts], readings, settings }).panels[0]!

describe('whatever the car', () => {
  it('nothing exceeds the hard cap or the floor, whoever decides and whatever a studio sets', () => {
    fc.assert(
      fc.property(cars, um(30, 500), fc.option(um(30, 500)), settingsAny, (car, t, j, settings) => {
        const p = judge(car, j === null ? [total(t)] : [total(t), jamb(j)], settings)
        for (const a of [p.light, p.strong, p.decision]) {
          expect(a).toBeGreaterThanOrEqual(0)
          if (a > 0) expect(p.removedAssumed + a).toBeLessThanOrEqual(12.7 + 1e-9)
        }
        expect(p.strong).toBeLessThanOrEqual(p.light)
        if (p.topcoat !== null && car.finish === 'clear-coat' && p.light > 0.999)
          expect(p.topcoat.mean - p.light).toBeGreaterThanOrEqual(35.56)
      }),
      { numRuns: 300 },
    )
  })
  it('a reference never raises what may come off', () => {
    fc.assert(
      fc.property(cars, um(60, 250), um(30, 250), (car, t, j) => {
        const without = judge(car, [total(t)])
        const with_ = judge(car, [total(t), jamb(j)])
        expect(with_.light).toBeLessThanOrEqual(without.light + 1e-9)
        expect(with_.decision).toBeLessThanOrEqual(without.decision + 1e-9)
      }),
      { numRuns: 300 },
    )
  })
  it('once the gate has closed a thicker panel never gets more', () => {
    fc.assert(
      fc.property(clear, um(145, 1500), um(0, 500), fc.option(um(40, 140)), (car, t, more, j) => {
        const readings = (x: number) => (j === null ? [total(x)] : [total(x), jamb(j)])
        const thin = judge(car, readings(t))
        const thick = judge(car, readings(t + more))
        expect(thin.topcoat).toBeNull()
        expect(thick.light).toBeLessThanOrEqual(thin.light + 1e-9)
        expect(thick.strong).toBe(0)
        expect(thick.decision).toBeLessThanOrEqual(thin.decision + 1e-9)
      }),
    )
  })
  it('crossing the gate upward never earns more than an open gate would', () => {
    fc.assert(
      fc.property(
        clear,
        um(138, 140),
        um(145, 1500),
        fc.option(um(40, 120)),
        (car, open, closed, j) => {
          const ref = j === null ? [] : [jamb(j)]
          expect(judge(car, [total(closed), ...ref]).light).toBeLessThanOrEqual(
            judge(car, [total(open), ...ref]).light + 1e-9,
          )
        },
      ),
    )
  })
  it('plastic and composite never yield a reading by magnetic or eddy probe', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('plastic' as const, 'composite' as const),
        fc.constantFrom('magnetic' as const, 'eddy' as const, 'dual' as const, undefined),
        um(1, 500),
        (substrate, probe, t) => {
          const a = assessCar({
            car: { year: 2015, nowYear: 2026, finish: 'clear-coat' },
            panels: [{ ...facts, substrate }],
            readings: [{ ...total(t), probe }],
          })
          const p = a.panels[0]!
          expect([p.totalMean, p.thinnest, p.light, p.strong]).toEqual([null, null, 0, 0])
          expect(p.verdict).toBe('cannot-be-read')
        },
      ),
    )
  })
  it('a set with two readings too far apart is always flagged', () => {
    fc.assert(
      fc.property(um(60, 200), um(1.06, 2), (t, apart) => {
        const values = [t, t, t * apart]
        const mean = (2 * t + t * apart) / 3
        fc.pre(t * apart - t > Math.max(0.05 * mean, 2) + 1e-6)
        const p = judge({ year: 2015, nowYear: 2026, finish: 'clear-coat' }, [
          { ...total(t), values },
        ])
        expect(p.why.map((w) => w.code)).toContain('paint.why.discordant')
      }),
    )
  })
  it('a worse gauge never narrows, and more repeats of one value never widen, on the panel', () => {
    fc.assert(
      fc.property(um(60, 200), um(0, 5), um(0, 5), fc.integer({ min: 1, max: 9 }), (t, a, b, n) => {
        const u = (accuracyPercent: number, k: number) =>
          assessCar({
            car: { year: 2015, nowYear: 2026, finish: 'clear-coat' },
            panels: [facts],
            readings: [{ ...total(t), values: Array(k).fill(t) }],
            gauge: { accuracyPercent, repeatabilitySd: 2 },
          }).panels[0]!.totalU!
        expect(u(Math.max(a, b), n)).toBeGreaterThanOrEqual(u(Math.min(a, b), n))
        expect(u(a, n + 1)).toBeLessThanOrEqual(u(a, n) + 1e-12)
      }),
    )
  })
  it('answers for any facts and gives the same bytes twice', () => {
    fc.assert(
      fc.property(
        cars,
        fc.constantFrom(...panelSubstrates),
        fc.option(fc.constantFrom(...probes), { nil: undefined }),
        fc.array(fc.double({ min: -10, max: 2000 }), { maxLength: 6 }),
        (car, substrate, probe, values) => {
          const run = () =>
            JSON.stringify(
              assessCar({
                car,
                panels: [{ ...facts, substrate }],
                readings: [{ panel: 'a', kind: 'panel', values, probe }],
              }),
            )
          expect(run()).toBe(run())
          expect(run()).not.toContain('"light":null')
        },
      ),
    )
  })
})
