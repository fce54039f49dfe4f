import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseDay } from '../../kernel/calendar'
import type { JobPlan } from './job-plan'
import { planJob } from './plan-job'
import { sampleJob } from './sample-jobs'

type Stretch = { from: number; to: number; day: number; people: readonly number[]; task: string }
const localMinute = (at: { date: string; minute: number }): number => {
  const day = parseDay(at.date)
  if (!day.ok) throw new Error(day.error)
  return day.value * 1440 + at.minute
}
const stretches = (plan: JobPlan): Stretch[] =>
  plan.days.flatMap((day) => {
    const dayNo = parseDay(day.date)
    if (!dayNo.ok) throw new Error(dayNo.error)
    return day.blocks.map((b) => ({
      from: dayNo.value * 1440 + b.from,
      to: dayNo.value * 1440 + b.to,
      day: dayNo.value,
      people: b.people,
      task: b.task,
    }))
  })
const anyJob = fc.integer({ min: 1, max: 100_000 }).map(sampleJob)

describe('plans of invented jobs', () => {
  it('keep order, lags, people, machine limit and hours', () => {
    fc.assert(
      fc.property(anyJob, fc.integer({ min: 1, max: 3 }), (job, people) => {
        const hours = { ...job.studio, people }
        const result = planJob(job.tasks, hours, job.start, job.startMinute)
        if (!result.ok) throw new Error(result.error)
        const all = stretches(result.value)
        const first = new Map<string, number>()
        const last = new Map<string, number>()
        const machine = new Map<string, number>()
        for (const s of all) {
          first.set(s.task, Math.min(s.from, first.get(s.task) ?? s.from))
          last.set(s.task, Math.max(s.to, last.get(s.task) ?? s.to))
          const open = hours.week[(s.day + 3) % 7]!
          const inside = open.some(
            (w) => s.day * 1440 + w.from <= s.from && s.to <= s.day * 1440 + w.to,
          )
          expect(inside).toBe(true)
          expect(s.people.every((p) => p < people)).toBe(true)
          const clash = all.filter(
            (o) =>
              o !== s &&
              o.from < s.to &&
              s.from < o.to &&
              o.people.some((p) => s.people.includes(p)),
          )
          expect(clash).toEqual([])
          if (!job.tasks.find((t) => t.id === s.task)!.machine) continue
          for (const p of s.people) {
            const key = `${s.day} ${p}`
            machine.set(key, (machine.get(key) ?? 0) + s.to - s.from)
          }
        }
        for (const minutes of machine.values()) expect(minutes).toBeLessThanOrEqual(330)
        for (const t of job.tasks) {
          for (const wait of t.after) {
            // The zone of these jobs has one offset, so local minutes are as good as UTC ones.
            const least = last.get(wait.id)! + (wait.lagKind === 'elapsed' ? wait.lag : 0)
            expect(first.get(t.id)).toBeGreaterThanOrEqual(least)
          }
          const own = all.filter((s) => s.task === t.id)
          const crew = own[0]!.people.length
          const worked = own.reduce((sum, s) => sum + s.to - s.from, 0)
          const needed = crew > 1 ? Math.ceil(t.minutes / 1.75 - 1e-9) : Math.round(t.minutes)
          expect(worked).toBe(Math.max(1, needed))
          if (!t.pausable) expect(new Set(own.map((s) => s.day)).size).toBe(1)
        }
        // One car takes one bay and one lift: its holds never overlap, and cover every such block.
        for (const resource of ['bay', 'lift'] as const) {
          const holds = result.value.holds[resource].map((hold) => ({
            from: localMinute(hold.from),
            until: localMinute(hold.until),
          }))
          for (const [k, hold] of holds.entries()) {
            expect(hold.until).toBeGreaterThan(hold.from)
            if (k > 0) expect(hold.from).toBeGreaterThan(holds[k - 1]!.until)
          }
          const needed = all.filter((s) => job.tasks.find((t) => t.id === s.task)!.needs[resource])
          const outside = needed.filter(
            (s) => !holds.some((h) => h.from <= s.from && s.to <= h.until),
          )
          expect(outside).toEqual([])
        }
      }),
      { numRuns: 150, seed: 1 },
    )
  }, 120_000)

  it('are never ready later with one more person', () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        let before = '9999'
        for (let people = 1; people <= 5; people++) {
          const result = planJob(job.tasks, { ...job.studio, people }, job.start, job.startMinute)
          if (!result.ok) throw new Error(result.error)
          expect(result.value.readyAt.utc <= before).toBe(true)
          before = result.value.readyAt.utc
        }
      }),
      { numRuns: 120, seed: 1 },
    )
  }, 120_000)

  it('are the same to the byte every time', () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        const once = () =>
          JSON.stringify(planJob(job.tasks, job.studio, job.start, job.startMinute))
        expect(once()).toBe(once())
      }),
      { numRuns: 60, seed: 1 },
    )
  }, 120_000)
})
