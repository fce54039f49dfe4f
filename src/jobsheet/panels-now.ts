import type { PanelPaint } from '../quote/estimate-types'
import {
  allowed,
  assessCar,
  type PaintAssessment,
  type PaintInput,
  type Permission,
  sequenceById,
  sequenceIds,
} from '../quote/paint'
import type { PaintCase } from '../quote/paint-of'
import { saidVerdict } from '../quote/said-verdict'
import type { BenchFacts } from './bench-facts'
import { type GaugeCheck, gaugeOf } from './gauge-check'
import { benchReadings, doneSets } from './readings'

export type PaintBench = BenchFacts & { readonly gaugeChecks: readonly GaugeCheck[] }

type Limits = PaintInput['settings']

const assessed = (
  { input }: Pick<PaintCase, 'input'>,
  bench: PaintBench,
  limits: Limits,
): PaintAssessment =>
  assessCar({
    ...input,
    readings: benchReadings(bench),
    gauge: gaugeOf(bench.gaugeChecks, bench.readings),
    done: doneSets(bench),
    ...(limits ? { settings: limits } : {}),
  })

/**
 * Panels as they stand now: what the owner told, with the bench's own readings, gauge checks and sets;
 * what this job took off, and what may still come off. Lengths µm.
 */
export const panelsNow = (
  paint: PaintCase,
  bench: PaintBench,
  limits?: Limits,
): readonly PanelPaint[] =>
  assessed(paint, bench, limits).panels.map((p) => ({
    panel: p.panel,
    topcoat: p.topcoat,
    total: p.totalMean,
    light: p.light,
    strong: p.strong,
    deepest: p.deepest,
    byDecision: p.deepestByDecision === p.deepest ? null : p.deepestByDecision,
    removed: {
      um: p.removed.um,
      measured: p.removed.measured?.fall ?? null,
      told: p.removed.resolved,
    },
    reference: p.referenceMean,
    verdict: bench.unreadable[p.panel] === undefined ? saidVerdict(p) : 'cannot-be-read',
    why: p.why.map((w) => ({ key: w.code, params: w.params })),
    because: paint.because,
  }))

/**
 * May this sequence be run on this panel now? `word`: the owner's written decision for it is there. A
 * passed test spot is not asked for here, since the sheet holds polishing until its yes. An unknown
 * panel or sequence, and one that cannot be read, is never allowed.
 */
export const mayRun = (
  paint: Pick<PaintCase, 'input'>,
  bench: PaintBench,
  limits: Limits,
  asked: { readonly panel: string; readonly sequence: string; readonly word: boolean },
): Permission => {
  const { panels, settings } = assessed(paint, bench, limits)
  const id = sequenceIds.find((each) => each === asked.sequence)
  const panel = panels.find((p) => p.panel === asked.panel)
  if (id === undefined || panel === undefined || bench.unreadable[asked.panel] !== undefined)
    return { allowed: false, needs: 'nothing-helps' }
  return allowed(sequenceById(id), panel.permit, settings, {
    decision: asked.word,
    testSpotPassed: true,
  })
}
