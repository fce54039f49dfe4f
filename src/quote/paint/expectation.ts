import { normalCdf, normalQuantile } from '../../kernel/statistics'
import type { DefectClass, Spread } from './types'

/**
 * Depth of a class of marks, lognormal: median in µm and sd of the logarithm (own estimate, held to the trade's
 * words: light marring about 1.3, deeper random marks 3-4, a mark that catches a nail stays).
 */
export const defectDepths: Readonly<
  Record<DefectClass, { readonly median: number; readonly logSd: number }>
> = {
  haze: { median: 0.3, logSd: 0.6 },
  swirls: { median: 0.9, logSd: 0.7 },
  light: { median: 2.5, logSd: 0.5 },
  'catches-nail': { median: 10, logSd: 0.55 },
  through: { median: 80, logSd: 0.25 },
}

export type Defect = { readonly class: DefectClass; readonly share?: number | undefined }
export type Share = { readonly low: number; readonly mid: number; readonly high: number }
export type Expectation = Share & {
  readonly byClass: readonly (Share & { readonly class: DefectClass })[]
  /** Classes of which most stays, whatever the plan: softer, not gone. */
  readonly stays: readonly DefectClass[]
}

/** What is looked at when nobody named a mark: wash marks, mostly swirls (own estimate). */
const washMarks: readonly Defect[] = [
  { class: 'swirls', share: 0.75 },
  { class: 'light', share: 0.25 },
]

const shallower = (kind: DefectClass, um: number): number => {
  const { median, logSd } = defectDepths[kind]
  return um <= 0 ? 0 : normalCdf(Math.log(um / median) / logSd)
}

/** Standard normal at the middles of twenty equal slices, and at the 10th and 90th percentile. */
const slices = Array.from({ length: 20 }, (_, i) => normalQuantile((i + 0.5) / 20))
const z90 = normalQuantile(0.9)

/** P(depth ≤ removal) over both spreads; low and high at the 10th and 90th percentile of the removal. */
export const shareRemoved = (kind: DefectClass, removal: Spread): Share => {
  const at = (z: number): number => shallower(kind, removal.mean + removal.sd * z)
  const mid = slices.reduce((sum, z) => sum + at(z), 0) / slices.length
  // For a depth far out of reach the average can pass the 90th percentile: a few deep strokes carry it.
  return { low: Math.min(at(-z90), mid), mid, high: Math.max(at(z90), mid) }
}

/**
 * Share of the visible marks a removal takes, weighted by how much of the picture each class is (equal when not
 * said). Defects inform the customer only; they never change a verdict.
 */
export const expectationOf = (removal: Spread, defects: readonly Defect[]): Expectation => {
  const seen = defects.length === 0 ? washMarks : defects
  const byClass = seen.map((d) => ({ class: d.class, ...shareRemoved(d.class, removal) }))
  const weights = seen.map((d) => Math.max(0, d.share ?? 1))
  const all = weights.reduce((a, b) => a + b, 0)
  const over = (key: keyof Share): number =>
    all === 0 ? 0 : byClass.reduce((sum, c, i) => sum + (weights[i]! / all) * c[key], 0)
  return {
    low: over('low'),
    mid: over('mid'),
    high: over('high'),
    byClass,
    stays: byClass.filter((c) => c.mid < 0.5).map((c) => c.class),
  }
}
