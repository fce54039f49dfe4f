import { describe, expect, it } from 'vitest'
import { planJob } from './plan-job'
import { planReady } from './ready'
import { readyGap } from './ready-simulation'
import { sampleJob } from './sample-jobs'

/** Half of a working day of the invented studios: 495 minutes open, 30 of them set-up. */
const HALF_DAY = (495 - 30) / 2
const JOBS = Array.from({ length: 12 }, (_, i) => sampleJob(i + 1))

describe('planReady', () => {
  it('lies within half a working day of a simulation in at least 95 % of the ready times', () => {
    const gaps = JOBS.map((job) => readyGap(job, 250)).flatMap(({ likely, cautious }) => [
      likely,
      cautious,
    ])
    const near = gaps.filter((gap) => Math.abs(gap) <= HALF_DAY).length
    expect(gaps).toHaveLength(24)
    expect(near / gaps.length).toBeGreaterThanOrEqual(0.95)
  }, 180_000)

  it('with no spread is the plan itself, and the cautious time is never the earlier', () => {
    for (const { tasks, studio, start, startMinute } of JOBS) {
      const plan = planJob(tasks, studio, start, startMinute)
      if (!plan.ok) throw new Error(plan.error)
      const sure = planReady(tasks, studio, start, { median: 1, p80: 1 }, startMinute)
      if (!sure.ok) throw new Error(sure.error)
      expect(sure.value.plan).toEqual(plan.value)
      expect(sure.value.readyLikely).toEqual(plan.value.readyAt)
      expect(sure.value.readyCautious).toEqual(plan.value.readyAt)
      const spread = planReady(tasks, studio, start, { median: 0.97, p80: 1.2 }, startMinute)
      if (!spread.ok) throw new Error(spread.error)
      const { readyLikely, readyCautious } = spread.value
      expect(readyLikely.utc <= readyCautious.utc).toBe(true)
    }
  })

  it('passes on the errors of the plan', () => {
    const { tasks, studio } = JOBS[0]!
    const ratios = { median: 1, p80: 1.2 }
    expect(planReady(tasks, studio, '2026-02-30', ratios)).toEqual({ ok: false, error: 'bad-date' })
  })
})
