import { combineUncertainty, normalQuantile } from '../../kernel/statistics'
import { removedByAge, removedMost } from './constants'
import { type PaintStepId, removal95 } from './sequences'
import type { Measured } from './spot'
import type { CarFacts } from './types'

/**
 * µm taken off before this job: the documented figure, else by age (1 new, 3 at 5 years, 5 beyond 15),
 * and 5 for several owners, a shown car, an unknown past or an unknown year (own estimate).
 */
export const removedBefore = (car: CarFacts): number => {
  if (typeof car.documentedRemovedUm === 'number') return Math.max(0, car.documentedRemovedUm)
  if (car.year === null || car.ownersMany || car.shown || car.unknownHistory) return removedMost
  const age = Math.max(0, car.nowYear - car.year)
  for (let i = 1; i < removedByAge.length; i++) {
    const a = removedByAge[i - 1]!
    const b = removedByAge[i]!
    if (age <= b.years) return a.um + ((b.um - a.um) * (age - a.years)) / (b.years - a.years)
  }
  return removedMost
}

export type SetsDone = { readonly step: PaintStepId; readonly sets: number }

export type RemovedInJob = {
  /** What later work must assume is gone, µm. */
  readonly um: number
  /** Upper value of the counted sets, µm. */
  readonly counted: number
  /** Fall of the reading and its 95 % upper bound, µm; null without a pair. */
  readonly measured: { readonly fall: number; readonly upper: number; readonly u: number } | null
  /** False when the fall cannot be told from the gauge's own error at 95 %. */
  readonly resolved: boolean
}

/**
 * Removed in this job: the larger of the counted sets at their 95 % value and the measured upper bound.
 * One gauge's own error cancels in the pair, so only the repeatability of both means counts (about ±3 µm for
 * three readings each).
 */
export const removedInJob = (
  done: readonly SetsDone[],
  factor: number,
  before: Measured | null,
  after: Measured | null,
): RemovedInJob => {
  const steps = done.flatMap((d) => Array.from({ length: d.sets }, () => d.step))
  const counted = steps.length === 0 ? 0 : removal95(steps, factor)
  if (before === null || after === null)
    return { um: counted, counted, measured: null, resolved: false }
  const fall = before.mean - after.mean
  const u = combineUncertainty([before.uA ?? before.u, after.uA ?? after.u])
  const reach = normalQuantile(0.95) * u
  const upper = Math.max(0, fall + reach)
  return {
    um: Math.max(counted, upper),
    counted,
    measured: { fall, upper, u },
    resolved: fall > reach,
  }
}
