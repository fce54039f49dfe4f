import { parseDay } from '../../kernel/calendar'
import { planJob } from './plan-job'
import { type LabourRatios, planReady } from './ready'
import type { SampleJob, ThreePoint } from './sample-jobs'
import { makeAxis, workAfter } from './working-axis'

// A plain Monte Carlo of ready times, for tests and proofs only: it shares the planner with the
// closed answer, but draws every task and every common factor by itself.

const congruential = (seed: number): (() => number) => {
  let state = seed | 0
  return () => {
    // Numerical Recipes' quick generator: 1664525, 1013904223.
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) | 0
    return ((state >>> 0) + 0.5) / 4_294_967_296
  }
}

const draws = (random: () => number) => {
  // Marsaglia's polar method: it needs no sine, whose last bit differs between engines.
  const normal = (): number => {
    for (;;) {
      const u = 2 * random() - 1
      const v = 2 * random() - 1
      const s = u * u + v * v
      if (s > 0 && s < 1) return u * Math.sqrt((-2 * Math.log(s)) / s)
    }
  }
  // Marsaglia and Tsang 2000, for shapes of at least 1 as every PERT shape is.
  const gamma = (shape: number): number => {
    const d = shape - 1 / 3
    const c = 1 / Math.sqrt(9 * d)
    for (;;) {
      const x = normal()
      const root = 1 + c * x
      if (root <= 0) continue
      const v = root * root * root
      if (Math.log(random()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v
    }
  }
  const pert = ({ low, mode, high }: ThreePoint): number => {
    const width = high - low
    const a = gamma(1 + (4 * (mode - low)) / width)
    const b = gamma(1 + (4 * (high - mode)) / width)
    return low + (width * a) / (a + b)
  }
  return { normal, pert }
}

/** Working minute of a job's studio at a UTC instant, counted from the job's start. */
const workingMinute = (job: SampleJob): ((utc: string) => number) => {
  const day = parseDay(job.start)
  if (!day.ok) throw new Error(day.error)
  const axis = makeAxis(job.studio, day.value, job.startMinute)
  return (utc) => {
    const date = parseDay(utc.slice(0, 10))
    if (!date.ok) throw new Error(date.error)
    const minute = Number(utc.slice(11, 13)) * 60 + Number(utc.slice(14, 16))
    return workAfter(axis, date.value * 1440 + minute)
  }
}

export type ReadyGap = {
  readonly ratios: LabourRatios
  /** Closed answer minus simulated quantile, in working minutes. */
  readonly likely: number
  readonly cautious: number
}

/** Simulates a job and compares its 50th and 80th percentile with planReady's two ready times. */
export const readyGap = (job: SampleJob, samples: number): ReadyGap => {
  const { normal, pert } = draws(congruential(20_261_125))
  const { tasks, studio, start, startMinute, commonSd } = job
  const position = workingMinute(job)
  const ready: number[] = []
  const labour: number[] = []
  for (let k = 0; k < samples; k++) {
    const factor = Math.exp(commonSd * normal() - (commonSd * commonSd) / 2)
    const drawn = tasks.map((task, i) => ({ ...task, minutes: pert(job.points[i]!) * factor }))
    labour.push(drawn.reduce((sum, task) => sum + task.minutes, 0))
    const plan = planJob(drawn, studio, start, startMinute)
    if (!plan.ok) throw new Error(plan.error)
    ready.push(position(plan.value.readyAt.utc))
  }
  ready.sort((a, b) => a - b)
  labour.sort((a, b) => a - b)
  const at = (sorted: readonly number[], share: number) => sorted[Math.ceil(share * samples) - 1]!
  const mean = tasks.reduce((sum, task) => sum + task.minutes, 0)
  const ratios = { median: at(labour, 0.5) / mean, p80: at(labour, 0.8) / mean }
  const closed = planReady(tasks, studio, start, ratios, startMinute)
  if (!closed.ok) throw new Error(closed.error)
  return {
    ratios,
    likely: position(closed.value.readyLikely.utc) - at(ready, 0.5),
    cautious: position(closed.value.readyCautious.utc) - at(ready, 0.8),
  }
}
