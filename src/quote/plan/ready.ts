import { ok, type Result } from '../../kernel/result'
import { dayPlan, momentOf, readyMinute } from './day-plan'
import type { JobPlan, Moment } from './job-plan'
import { stretched } from './model'
import { type PlanError, type PlanLimits, solveJob, solveModel } from './plan-job'
import type { Studio, Task } from './task'
import { orNoTime } from './working-axis'

/** Quantiles of the job's whole labour as shares of its mean, such as 0.98 and 1.2. */
export type LabourRatios = { readonly median: number; readonly p80: number }
export type ReadyPlan = {
  /** The plan at the mean minutes. */
  readonly plan: JobPlan
  /** Ready with a chance of one half, and of four in five. */
  readonly readyLikely: Moment
  readonly readyCautious: Moment
}

/** Fresh starts beside the course of the mean plan (own estimate). */
const FRESH_STARTS = 8

/**
 * Plan and ready times at 50 and 80 %. Task minutes are means; every task is stretched to the
 * quantile of the whole labour, as one factor common to the car outweighs the tasks' own spread.
 * Errors as planJob.
 */
export const planReady = (
  tasks: readonly Task[],
  studio: Studio,
  startLocal: string,
  ratios: LabourRatios,
  startMinute = 0,
  limits: PlanLimits = {},
): Result<ReadyPlan, PlanError> => {
  const mean = solveJob(tasks, studio, startLocal, startMinute, limits)
  if (!mean.ok) return mean
  const { model, found } = mean.value
  return orNoTime(() => {
    const readyAt = (ratio: number): number => {
      const longer = solveModel(stretched(model, ratio), FRESH_STARTS, found.course)
      return readyMinute(longer.model, longer.found.placed)
    }
    const likely = readyAt(ratios.median)
    const cautious = readyAt(ratios.p80)
    return ok({
      plan: dayPlan(model, found.placed),
      readyLikely: momentOf(model, likely),
      readyCautious: momentOf(model, Math.max(likely, cautious)),
    })
  })
}
