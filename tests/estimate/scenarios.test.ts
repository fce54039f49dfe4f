import { describe, expect, it } from 'vitest'
import type { Estimated, EstimateInput } from '../../src/quote/estimate'
import { scenarioCars } from '../../src/quote/steps/scenario-cars'
import { answersOf } from '../../src/quote/steps/step-bench'
import { estimateOf } from './studio'

type Readings = EstimateInput['readings']

const panels = (values: Readonly<Record<string, readonly number[]>>): Readings =>
  Object.entries(values).map(([panel, each]) => ({
    panel,
    kind: 'panel',
    values: each,
    probe: 'dual',
  }))

/** Readings the scenario tells, in micrometres; the hours are told before anything is measured. */
const readings: Readonly<Record<string, Readings>> = {
  S1: panels({ bonnet: [88, 92, 90], roof: [94, 96, 95] }),
  S4: panels({ bonnet: [310, 365, 420] }),
  S10: panels({ bonnet: [75, 80, 78], roof: [82, 85, 84] }),
}

/** What must be said, by any line of the estimate; one id of each row is enough (own estimate). */
const warned: Readonly<Record<string, readonly (readonly string[])[]>> = {
  S1: [
    ['film-old'],
    ['film-edge'],
    ['leak-unproven'],
    ['badge-pin', 'fragile-parts'],
    ['wheels-off'],
    ['single-stage'],
  ],
  S2: [['black-shows'], ['deeper-appear', 'deep-marks'], ['coating-rest']],
  S2b: [['black-shows'], ['show-limits'], ['coating-rest']],
  S3: [
    ['mould-specialist'],
    ['mould-beyond-limits'],
    ['soaked'],
    ['wet-electrics'],
    ['leak-unproven'],
  ],
  S4: [['repainted'], ['peel'], ['peeling-panels']],
  S5: [['matte'], ['matte-polish']],
  S6: [['fresh-paint'], ['fresh-paint-protection'], ['painter-sheet']],
  S7: [['roof-window'], ['leather'], ['leak-unproven'], ['wet-cabin-cleaning']],
  S8: [['film-started'], ['film-over-repaint'], ['film-lifts-paint']],
  S9: [['fade-only'], ['pet-hair'], ['clean-shows-marks']],
  S10: [['lacquer'], ['old-pigment'], ['rodents'], ['not-driving'], ['lacquer-machine']],
}

const saidBy = (e: Estimated): readonly string[] =>
  [...e.riskNotes, ...e.couldAdd, ...e.openPoints, ...e.scope.turnedDown].map((line) => line.id)

/** Shared hours as a share of the narrower of the two ranges. */
const overlap = (a: readonly [number, number], b: readonly [number, number]): number =>
  Math.max(0, Math.min(a[1], b[1]) - Math.max(a[0], b[0])) / Math.min(a[1] - a[0], b[1] - b[0])

describe('ten cars and a careful detailer, through the whole estimate (own estimate)', () => {
  it.each(scenarioCars)('$id $name', ({ id, car, unsure, hours, must, never }) => {
    const answers = answersOf(car, unsure)
    const e = estimateOf(answers)
    const scope = e.steps.map((s) => s.id)
    const likely = [...scope, ...e.couldAdd.map((a) => a.id)]
    for (const step of must) expect(likely).toContain(step)
    for (const step of never) expect(scope).not.toContain(step)
    for (const row of warned[id] ?? [])
      expect(
        row.some((x) => saidBy(e).includes(x)),
        row.join(),
      ).toBe(true)
    expect(warned[id]?.length).toBeGreaterThan(0)
    const ours = [e.labourMinutes.low / 60, e.labourMinutes.high / 60] as const
    expect(overlap(ours, hours), `${ours} against ${hours}`).toBeGreaterThanOrEqual(0.6)
  })

  it.each(Object.entries(readings))('%s: nothing is cut once it is measured', (id, read) => {
    const car = scenarioCars.find((s) => s.id === id)
    const e = estimateOf(answersOf(car?.car ?? {}, car?.unsure), read)
    expect(read.every((r) => e.paint.panels.some((p) => p.panel === r.panel))).toBe(true)
    expect(e.steps.map((s) => s.id)).not.toContain('polish-cut')
    expect(['none', 'hand', 'finishing', 'light']).toContain(e.scope.level)
  })
})
