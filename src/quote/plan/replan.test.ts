import { describe, expect, it } from 'vitest'
import type { JobPlan } from './job-plan'
import { planJob } from './plan-job'
import { type Done, type PeopleFrom, replan } from './replan'
import { sampleJob } from './sample-jobs'
import type { After, Studio, Task } from './task'

const OPEN = [
  { from: 480, to: 720 },
  { from: 780, to: 1020 },
]
const studio: Studio = {
  people: 2,
  bays: 1,
  lifts: 1,
  week: [OPEN, OPEN, OPEN, OPEN, OPEN, [], []],
  daysOff: [],
  machineMinutesPerPersonDay: 330,
  dayCapMinutes: 480,
  setUpMinutesPerDay: 30,
  zone: [],
}
const task = (id: string, minutes: number, after: readonly After[] = []): Task => ({
  id,
  minutes,
  crewMax: 1,
  machine: false,
  needs: { bay: true, lift: false },
  after,
  pausable: true,
})
const cure = (id: string, lag: number, lagKind: After['lagKind'] = 'elapsed'): After => ({
  id,
  lag,
  lagKind,
  block: 'car',
})
const AT = { date: '2026-11-23', minute: 780 } // a Monday after the break
const planned = (
  tasks: readonly Task[],
  done: readonly Done[] = [],
  people: readonly PeopleFrom[] = [],
  from = AT,
): JobPlan => {
  const result = replan(tasks, studio, done, from, people)
  if (!result.ok) throw new Error(result.error)
  return result.value
}
const rows = (plan: JobPlan) =>
  plan.days.flatMap((day) =>
    day.blocks.map((b) => `${day.date} ${b.from}-${b.to} ${b.task} ${b.people.join('+')}`),
  )

// Expected times are counted out by hand on a clock.
describe('replan', () => {
  it('plans only what is left of each task, without a second set-up on the same day', () => {
    const plan = planned(
      [task('a', 100), task('b', 90, [cure('a', 0)])],
      [{ id: 'a', minutes: 40 }],
    )
    expect(rows(plan)).toEqual(['2026-11-23 780-840 a 0', '2026-11-23 840-930 b 0'])
    expect(plan.personMinutes).toBe(150)
  })

  it('lets the lag of a finished task run from its end, or from now when that is not known', () => {
    const tasks = [task('a', 100), task('b', 30, [cure('a', 120)])]
    const known = { id: 'a', minutes: 100, finishedAt: { date: '2026-11-23', minute: 700 } }
    expect(rows(planned(tasks, [known]))).toEqual(['2026-11-23 820-850 b 0'])
    expect(rows(planned(tasks, [{ id: 'a', minutes: 100 }]))).toEqual(['2026-11-23 900-930 b 0'])
    const working = [task('a', 100), task('b', 30, [cure('a', 60, 'working')])]
    // 20 of the 60 working minutes pass before the break at 12:00.
    expect(rows(planned(working, [known]))).toEqual(['2026-11-23 820-850 b 0'])
  })

  it('follows people who drop out and come back', () => {
    const both = [task('a', 400), task('b', 400)]
    const away = [
      { date: '2026-11-24', people: 1 },
      { date: '2026-11-26', people: 2 },
    ]
    expect(planned(both).readyAt).toMatchObject({ date: '2026-11-24', minute: 700 })
    const plan = planned(both, [], away)
    // Monday 2 × 210, Tuesday 450 for one person; 800 - 420 = 380 minutes are left on Tuesday.
    expect(plan.readyAt).toMatchObject({ date: '2026-11-24', minute: 950 })
    const tuesday = plan.days.find((day) => day.date === '2026-11-24')
    expect(new Set(tuesday?.blocks.flatMap((b) => b.people))).toEqual(new Set([0]))
    const nobody = planned([task('a', 400)], [], [{ date: '2026-11-24', people: 0 }, away[1]!])
    expect(rows(nobody)).toEqual(['2026-11-23 810-1020 a 0', '2026-11-26 510-700 a 0'])
  })

  it('uses a person who joins', () => {
    const three = ['a', 'b', 'c'].map((id) => task(id, 200))
    expect(planned(three).readyAt.date).toBe('2026-11-24')
    const joined = planned(three, [], [{ date: '2026-11-23', people: 3 }])
    expect(joined.readyAt).toMatchObject({ date: '2026-11-23', minute: 810 + 200 })
  })

  it('with nothing done is the plan of the same start; with all done it is over', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const job = sampleJob(seed)
      const from = { date: job.start, minute: job.startMinute }
      expect(replan(job.tasks, job.studio, [], from, [])).toEqual(
        planJob(job.tasks, job.studio, job.start, job.startMinute),
      )
      const all = job.tasks.map(({ id, minutes }) => ({ id, minutes }))
      expect(replan(job.tasks, job.studio, all, from, [])).toMatchObject({ value: { days: [] } })
    }
  })

  it('refuses what it cannot place', () => {
    const tasks = [task('a', 10)]
    const code = (done: readonly Done[], people: readonly PeopleFrom[], date = '2026-11-23') =>
      replan(tasks, studio, done, { date, minute: 480 }, people)
    expect(code([{ id: 'x', minutes: 1 }], [])).toEqual({ ok: false, error: 'unknown-task' })
    expect(code([], [], 'today')).toEqual({ ok: false, error: 'bad-date' })
    expect(code([], [{ date: '2026-02-30', people: 1 }])).toEqual({ ok: false, error: 'bad-date' })
    const never = code([], [{ date: '2026-11-01', people: 0 }])
    expect(never).toEqual({ ok: false, error: 'no-working-time' })
  })
})
