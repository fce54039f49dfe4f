import { formatDay, parseDay } from '../../kernel/calendar'
import { DAY_MINUTES, type LocalMinute } from '../../kernel/calendar-zone'
import type { Hold, JobPlan } from './job-plan'
import type { Studio } from './task'

/** What a planned job takes of the studio: people by stretch of a day, and when it keeps bay and lift. */
export type Taken = {
  readonly work: readonly {
    readonly date: string
    readonly from: number
    readonly to: number
    readonly people: number
  }[]
  readonly bay: readonly Hold[]
  readonly lift: readonly Hold[]
}
export type Booking = { readonly job: string; readonly plan: Taken }

/** What a plan takes, each day's set-up included; stretches of as many people that touch are one. */
export const takenBy = (plan: Pick<JobPlan, 'days' | 'holds'>): Taken => ({
  work: plan.days.flatMap(({ date, blocks, setUp }) => {
    const seats = Array.from({ length: setUp.people }, (_, seat) => seat)
    const all = [{ from: setUp.from, to: setUp.from + setUp.minutes, people: seats }, ...blocks]
    const marks = [...new Set(all.flatMap((b) => [b.from, b.to]))].sort((x, y) => x - y)
    const joined: { date: string; from: number; to: number; people: number }[] = []
    for (const [k, from] of marks.entries()) {
      const to = marks[k + 1]
      if (to === undefined) break
      const there = all.filter((b) => b.from <= from && b.to >= to)
      const people = new Set(there.flatMap((b) => b.people)).size
      const last = joined.at(-1)
      if (last?.to === from && last.people === people) last.to = to
      else if (people > 0) joined.push({ date, from, to, people })
    }
    return joined
  }),
  bay: plan.holds.bay,
  lift: plan.holds.lift,
})

export const SHARED = ['people', 'bay', 'lift'] as const
export type Shared = (typeof SHARED)[number]
/** More is needed on a date than there is; from-to is the stretch with the greatest need. */
export type Conflict = {
  readonly date: string
  readonly resource: Shared
  readonly from: number
  readonly to: number
  readonly needed: number
  readonly available: number
  readonly jobs: readonly string[]
}

/** A need in local minutes (day number × 1440 + minute of day). */
type Need = {
  readonly from: number
  readonly to: number
  readonly count: number
  readonly job: string
}

export const dayOfDate = (date: string): number => {
  const day = parseDay(date)
  if (!day.ok) throw new Error(`not a date in a plan: ${date}`)
  return day.value
}
export const localMinute = (at: LocalMinute): number => dayOfDate(at.date) * DAY_MINUTES + at.minute

const needsOf = ({ job, plan }: Booking, resource: Shared): Need[] => {
  if (resource !== 'people') {
    return plan[resource].map((hold) => ({
      from: localMinute(hold.from),
      to: localMinute(hold.until),
      count: 1,
      job,
    }))
  }
  return plan.work.map((stretch) => {
    const midnight = dayOfDate(stretch.date) * DAY_MINUTES
    return {
      from: midnight + stretch.from,
      to: midnight + stretch.to,
      count: stretch.people,
      job,
    }
  })
}

const overloads = (
  needs: readonly Need[],
  resource: Shared,
  available: (dayNo: number) => number,
) => {
  const marks = new Set<number>()
  for (const need of needs) {
    marks.add(need.from)
    marks.add(need.to)
    const lastDay = Math.floor((need.to - 1) / DAY_MINUTES)
    for (let day = Math.floor(need.from / DAY_MINUTES) + 1; day <= lastDay; day++) {
      marks.add(day * DAY_MINUTES)
    }
  }
  const times = [...marks].sort((a, b) => a - b)
  const worst = new Map<number, Conflict>()
  for (const [k, from] of times.entries()) {
    const to = times[k + 1]
    if (to === undefined) break
    const running = needs.filter((need) => need.from <= from && need.to >= to)
    const needed = running.reduce((sum, need) => sum + need.count, 0)
    const dayNo = Math.floor(from / DAY_MINUTES)
    const there = available(dayNo)
    if (needed <= there || needed <= (worst.get(dayNo)?.needed ?? 0)) continue
    const jobs = [...new Set(running.flatMap((need) => (need.count > 0 ? [need.job] : [])))].sort()
    const midnight = dayNo * DAY_MINUTES
    const stretch = { from: from - midnight, to: to - midnight }
    worst.set(dayNo, {
      date: formatDay(dayNo),
      resource,
      ...stretch,
      needed,
      available: there,
      jobs,
    })
  }
  return [...worst.entries()].sort(([a], [b]) => a - b).map(([, conflict]) => conflict)
}

/**
 * Where several planned jobs ask for more people, bays or lifts than the studio has, one entry per
 * date and resource. Seat numbers of a plan are its own: only how many people work is compared.
 * `peopleOn` gives the people of a date when it differs from the studio's number.
 */
export const bookings = (
  list: readonly Booking[],
  studio: Pick<Studio, 'people' | 'bays' | 'lifts'>,
  peopleOn: (date: string) => number = () => studio.people,
): readonly Conflict[] => {
  const available = {
    people: (dayNo: number) => peopleOn(formatDay(dayNo)),
    bay: () => studio.bays,
    lift: () => studio.lifts,
  }
  return SHARED.flatMap((resource) => {
    const needs = list.flatMap((booking) => needsOf(booking, resource))
    return overloads(needs, resource, available[resource])
  })
}
