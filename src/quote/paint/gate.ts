import { mad, median, normalQuantile } from '../../kernel/statistics'
import type { PaintSettings } from './constants'
import type { PaintPrior } from './priors'
import { type PanelFacts, type Why, why } from './types'

/** Is T an outlier against the car's other panels? Modified z-score on median and MAD, five panels or more. */
export const isOutlier = (total: number, all: readonly number[], s: PaintSettings): boolean => {
  if (all.length < 5) return false
  const off = Math.abs(total - median(all))
  return off > s.outlierLeast && 0.6745 * off > s.outlierScore * mad(all)
}

/** The thickest total (µm) that any of the priors still believes at the gate's own level. */
export const believableTotal = (priors: readonly PaintPrior[], s: PaintSettings): number => {
  const z = normalQuantile(1 - s.gateP / 2)
  return Math.max(
    ...priors.map(
      ({ undercoat: u, topcoat: c }) => u.mean + c.mean + z * Math.sqrt(u.sd * u.sd + c.sd * c.sd),
    ),
  )
}

export type GateInput = {
  readonly facts: PanelFacts
  readonly refinishedCar: boolean
  readonly total: number | null
  readonly allTotals: readonly number[]
  /** Fit of T alone, and of T with the reference (1 when there is none). */
  readonly pTotal: number
  readonly pBoth: number
}

/**
 * Why the factory prior must be dropped: topcoat unknown. Empty while the gate is open.
 * A thick panel closes it, so thickness never earns anything.
 */
export const gateWhys = (g: GateInput, s: PaintSettings): readonly Why[] => {
  const whys: Why[] = []
  if (g.refinishedCar) whys.push(why('paint.why.refinished-system'))
  if (g.facts.refinish === 'resprayed') whys.push(why('paint.why.resprayed'))
  if (g.total === null) return whys
  const total = g.total
  if (total > s.thickOffSills && !g.facts.isSill)
    whys.push(why('paint.why.thick', { total, limit: s.thickOffSills }))
  if (!g.facts.isSill && isOutlier(total, g.allTotals, s))
    whys.push(why('paint.why.outlier', { total, median: median(g.allTotals) }))
  if (g.pTotal < s.gateP) whys.push(why('paint.why.contradicts-prior', { total, p: g.pTotal }))
  else if (g.pBoth < s.gateP) whys.push(why('paint.why.reference-contradicts', { p: g.pBoth }))
  return whys
}
