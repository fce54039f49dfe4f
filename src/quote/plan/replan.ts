import { parseDay } from '../../kernel/calendar'
import { DAY_MINUTES, type LocalMinute, toUtcMinute } from '../../kernel/calendar-zone'
import { err, type Result } from '../../kernel/result'
import type { JobPlan } from './job-plan'
import { type PlanError, type PlanLimits, planJob } from './plan-job'
import type { After, Studio, Task } from './task'
import { makeAxis, orNoTime, utcOfEnd } from './working-axis'

/**
 * Work done on a task in its planned minutes (half done is half the minutes, whatever the clock
 * says). A task with all its minutes is finished; its lags run from `finishedAt` if that is known.
 */
export type Done = {
  readonly id: string
  readonly minutes: number
  readonly finishedAt?: LocalMinute
}
/** People there from a date on, until the next entry; the studio's number before the first. */
export type PeopleFrom = { readonly date: string; readonly people: number }

type Clock = { readonly dayNo: number; readonly minute: number }

const clockOf = (at: LocalMinute): Result<Clock, 'bad-date'> => {
  const day = parseDay(at.date)
  return day.ok ? { ok: true, value: { dayNo: day.value, minute: at.minute } } : err('bad-date')
}

/** UTC minute at which a lag that began at the given local moment is over. */
const lagOver = (studio: Studio, from: Clock, link: After): number => {
  if (link.lagKind === 'working') {
    const hours = { ...studio, setUpMinutesPerDay: 0 }
    return utcOfEnd(makeAxis(hours, from.dayNo, from.minute), link.lag)
  }
  return toUtcMinute(studio.zone, from.dayNo * DAY_MINUTES + from.minute) + link.lag
}

const peopleBy = (
  studio: Studio,
  byDate: readonly PeopleFrom[],
): Result<(dayNo: number) => number, 'bad-date'> => {
  const steps: { dayNo: number; people: number }[] = []
  for (const entry of byDate) {
    const day = parseDay(entry.date)
    if (!day.ok) return err('bad-date')
    steps.push({ dayNo: day.value, people: entry.people })
  }
  steps.sort((a, b) => a.dayNo - b.dayNo)
  return {
    ok: true,
    value: (dayNo) => steps.findLast((step) => step.dayNo <= dayNo)?.people ?? studio.people,
  }
}

/**
 * Plan of what is left from a local moment on, after a person dropped out or joined and with work
 * done so far. A lag of a finished task without a known end counts from `from`, the cautious side;
 * machine minutes spent earlier on that day are not known here. Errors as planJob.
 */
export const replan = (
  tasks: readonly Task[],
  studio: Studio,
  done: readonly Done[],
  from: LocalMinute,
  peopleByDate: readonly PeopleFrom[],
  beside: Pick<PlanLimits, 'peopleOn' | 'hoursOn'> = {},
): Result<JobPlan, PlanError> =>
  orNoTime(() => {
    const now = clockOf(from)
    if (!now.ok) return now
    const peopleOn = peopleBy(studio, peopleByDate)
    if (!peopleOn.ok) return peopleOn
    const ids = new Set(tasks.map((task) => task.id))
    if (done.some((entry) => !ids.has(entry.id))) return err('unknown-task')
    const spent = new Map(done.map((entry) => [entry.id, entry]))
    const finished = new Set(
      tasks.filter((task) => (spent.get(task.id)?.minutes ?? -1) >= task.minutes).map((t) => t.id),
    )
    const notBefore = new Map<string, number>()
    const left: Task[] = []
    for (const task of tasks) {
      if (finished.has(task.id)) continue
      for (const link of task.after) {
        if (!finished.has(link.id) || link.lag <= 0) continue
        const ended = spent.get(link.id)!.finishedAt
        const clock = ended ? clockOf(ended) : now
        if (!clock.ok) return clock
        const over = lagOver(studio, clock.value, link)
        notBefore.set(task.id, Math.max(over, notBefore.get(task.id) ?? over))
      }
      const minutes = task.minutes - (spent.get(task.id)?.minutes ?? 0)
      left.push({ ...task, minutes, after: task.after.filter((link) => !finished.has(link.id)) })
    }
    const people = Math.max(studio.people, ...peopleByDate.map((entry) => entry.people))
    const opens = studio.week[(((now.value.dayNo + 3) % 7) + 7) % 7]?.[0]?.from ?? DAY_MINUTES
    const setUpDone = done.length > 0 && from.minute >= opens + studio.setUpMinutesPerDay
    const limits: PlanLimits = { notBefore, peopleOn: peopleOn.value, setUpDone, ...beside }
    return planJob(left, { ...studio, people }, from.date, from.minute, limits)
  })
