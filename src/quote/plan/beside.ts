import { formatDay, isoWeekday } from '../../kernel/calendar'
import type { LocalMinute } from '../../kernel/calendar-zone'
import {
  type Booking,
  bookings,
  type Conflict,
  dayOfDate,
  localMinute,
  type Taken,
  takenBy,
} from './bookings'
import { type PlanLimits, planJob } from './plan-job'
import { SHORTEST_PART, type Studio, type Task, type Window } from './task'

/** People there on a date: the studio's number less those who are away. */
export type StaffOn = (date: string) => number

/** A moment a job may begin: a day, and a minute of it (0: when the studio opens). */
export type Begin = { readonly start: string; readonly startMinute: number }

type Stretch = { readonly from: number; readonly to: number; readonly people: number }

const byDate = (others: readonly Taken[]): ReadonlyMap<string, readonly Stretch[]> => {
  const found = new Map<string, Stretch[]>()
  for (const { work } of others)
    for (const stretch of work) {
      const known = found.get(stretch.date)
      if (known) known.push(stretch)
      else found.set(stretch.date, [stretch])
    }
  return found
}

/** How many of the stretches run in each piece of a open, cut where one begins or ends. */
const piecesOf = (open: Window, stretches: readonly Stretch[]): readonly Stretch[] => {
  const inside = stretches.filter((s) => s.from < open.to && s.to > open.from)
  const marks = [open.from, open.to, ...inside.flatMap((s) => [s.from, s.to])]
    .filter((at) => at >= open.from && at <= open.to)
    .sort((a, b) => a - b)
  return marks.flatMap((from, k) => {
    const to = marks[k + 1]
    if (to === undefined || to === from) return []
    const running = inside.filter((s) => s.from <= from && s.to >= to)
    return [{ from, to, people: running.reduce((sum, s) => sum + s.people, 0) }]
  })
}

/** Windows of the day in which somebody is free, and how many are free all through them. */
const freeOn = (
  windows: readonly Window[],
  stretches: readonly Stretch[],
  staff: number,
): { readonly hours: readonly Window[]; readonly people: number } => {
  const hours: { from: number; to: number }[] = []
  let people = staff
  for (const open of windows)
    for (const piece of piecesOf(open, stretches)) {
      if (piece.people >= staff) continue
      people = Math.min(people, staff - piece.people)
      const last = hours.at(-1)
      if (last?.to === piece.from) last.to = piece.to
      else hours.push({ from: piece.from, to: piece.to })
    }
  return { hours: hours.filter((h) => h.to - h.from >= SHORTEST_PART), people: Math.max(1, people) }
}

/** The hours and people other jobs leave; a coat that cures keeps its bay, but nobody's hands. */
export const leftBy = (
  others: readonly Taken[],
  studio: Pick<Studio, 'week'>,
  staffOn: StaffOn,
): Pick<PlanLimits, 'hoursOn' | 'peopleOn'> => {
  const taken = byDate(others)
  const known = new Map<number, ReturnType<typeof freeOn>>()
  const on = (dayNo: number) => {
    const was = known.get(dayNo)
    if (was) return was
    const date = formatDay(dayNo)
    const windows = studio.week[isoWeekday(dayNo) - 1] ?? []
    const free = freeOn(windows, taken.get(date) ?? [], staffOn(date))
    known.set(dayNo, free)
    return free
  }
  return { hoursOn: (dayNo) => on(dayNo).hours, peopleOn: (dayNo) => on(dayNo).people }
}

/** Where a job asks for more than there is, beside the others; conflicts among the others left out. */
export const conflictsOf = (
  job: Booking,
  others: readonly Booking[],
  studio: Studio,
  staffOn: StaffOn,
): readonly Conflict[] =>
  bookings([...others, job], studio, staffOn).filter((c) => c.jobs.includes(job.job))

/** Days looked through for a free one (own estimate). */
export const LOOK_DAYS = 90

/** Moments of a day at which something becomes free, the wanted one first. */
const begins = (date: string, wanted: number, others: readonly Taken[]): readonly number[] => [
  wanted,
  ...[
    ...new Set(
      others
        .flatMap((o) => [...o.bay, ...o.lift])
        .flatMap((h) => (h.until.date === date && h.until.minute > wanted ? [h.until.minute] : [])),
    ),
  ].sort((a, b) => a - b),
]

/**
 * The first moment from `from` on at which a job finds people, bay and lift free, with its plan then;
 * null where none of the next 90 days will do. `starts`: how hard each plan is searched.
 */
export const firstFree = (
  job: string,
  tasks: readonly Task[],
  studio: Studio,
  people: number,
  from: Begin,
  others: readonly Booking[],
  staffOn: StaffOn,
): { readonly begin: Begin; readonly taken: Taken; readonly ready: LocalMinute } | null => {
  const taken = others.map((o) => o.plan)
  const left = leftBy(taken, studio, staffOn)
  const first = dayOfDate(from.start)
  for (let day = first; day < first + LOOK_DAYS; day += 1) {
    const start = formatDay(day)
    if (left.hoursOn?.(day).length === 0 || studio.daysOff.includes(start)) continue
    for (const startMinute of begins(start, day === first ? from.startMinute : 0, taken)) {
      const plan = planJob(tasks, { ...studio, people }, start, startMinute, { ...left, starts: 2 })
      if (!plan.ok) continue
      // A day on which nobody has time for it is not the day it begins.
      if (plan.value.startsAt.date !== start) continue
      const own = { job, plan: takenBy(plan.value) }
      if (conflictsOf(own, others, studio, staffOn).length > 0) continue
      const { date, minute } = plan.value.readyAt
      // The car need not come before somebody has time for it.
      const opens = studio.week[isoWeekday(day) - 1]?.[0]?.from ?? 0
      const at = plan.value.startsAt.minute
      const begin = { start, startMinute: at > Math.max(opens, startMinute) ? at : startMinute }
      return { begin, taken: own.plan, ready: { date, minute } }
    }
  }
  return null
}

/** Minutes from one local moment to a later one, by the clock on the wall. */
export const minutesBetween = (from: LocalMinute, to: LocalMinute): number =>
  localMinute(to) - localMinute(from)
