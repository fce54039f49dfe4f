import { ok, type Result } from '../../kernel/result'
import { dayPlan, momentOf, readyMinute } from './day-plan'
import type { JobPlan, Moment } from './job-plan'
import { type PlanError, type PlanLimits, solveJob } from './plan-job'
import type { Studio, Task } from './task'

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
  const readyAt = (ratio: number): Result<number, PlanError> => {
    const stretched = tasks.map((task) => ({ ...task, minutes: task.minutes * ratio }))
    const fewer = { ...limits, starts: FRESH_STARTS }
    const solved = solveJob(stretched, studio, startLocal, startMinute, fewer, found.course)
    return solved.ok ? ok(readyMinute(solved.value.model, solved.value.found.placed)) : solved
  }
  const likely = readyAt(ratios.median)
  if (!likely.ok) return likely
  const cautious = readyAt(ratios.p80)
  if (!cautious.ok) return cautious
  return ok({
    plan: dayPlan(model, found.placed),
    readyLikely: momentOf(model, likely.value),
    readyCautious: momentOf(model, Math.max(likely.value, cautious.value)),
  })
}
