import type { PanelPaint } from '../quote/estimate-types'
import { assessCar, type PaintInput } from '../quote/paint'
import type { PaintCase } from '../quote/paint-of'
import { saidVerdict } from '../quote/said-verdict'
import type { BenchFacts } from './bench-facts'
import { benchReadings, doneSets } from './readings'

/** Panels as they stand now: what the owner told, with the bench's own readings and sets. Lengths µm. */
export const panelsNow = (
  { input, because }: PaintCase,
  bench: BenchFacts,
  limits?: PaintInput['settings'],
): readonly PanelPaint[] =>
  assessCar({
    ...input,
    readings: benchReadings(bench),
    gauge: {},
    done: doneSets(bench),
    ...(limits ? { settings: limits } : {}),
  }).panels.map((p) => ({
    panel: p.panel,
    topcoat: p.topcoat,
    total: p.totalMean,
    light: p.light,
    strong: p.strong,
    deepest: p.deepest,
    verdict: bench.unreadable[p.panel] === undefined ? saidVerdict(p) : 'cannot-be-read',
    why: p.why.map((w) => ({ key: w.code, params: w.params })),
    because,
  }))
