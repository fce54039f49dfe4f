import type { LocalMinute } from '../../kernel/calendar-zone'
import { conflictsOf, firstFree, leftBy, minutesBetween, type StaffOn } from './beside'
import { type Booking, type Shared, type Taken, takenBy } from './bookings'
import { type Done, replan } from './replan'
import type { Studio, Task } from './task'

/** A dated job as the days look at it. */
export type DatedJob = {
  readonly job: string
  readonly tasks: readonly Task[]
  readonly people: number
  readonly start: string
  readonly startMinute: number
  /** What it was to take, and when it was to be ready, as it was dated. */
  readonly booked: Taken
  readonly ready: LocalMinute
  /** waiting: the car is not here yet; over: nothing is left to do on it. */
  readonly stage: 'waiting' | 'begun' | 'over'
  readonly done: readonly Done[]
}

export type JobNow = {
  readonly job: string
  /** late: it takes longer than it was dated; moved: what it waits for is late. */
  readonly kind: 'kept' | 'late' | 'moved'
  readonly start: string
  readonly startMinute: number
  readonly taken: Taken
  readonly ready: LocalMinute
  /** Minutes by the clock it is later than it was dated. */
  readonly laterBy: number
  /** For a job that moves: the late ones it gives way to, and what it lacks. */
  readonly because: readonly { readonly job: string; readonly resource: Shared }[]
}

/** Less than this is no lateness worth a word (own estimate). */
export const LATE_MINUTES = 60

const asDated = (job: DatedJob): JobNow => ({
  job: job.job,
  kind: 'kept',
  start: job.start,
  startMinute: job.startMinute,
  taken: job.booked,
  ready: job.ready,
  laterBy: 0,
  because: [],
})

const NOTHING: Taken = { work: [], bay: [], lift: [] }

/** A job in hand, or one whose day has passed without its car: what is left, from now on. */
const fromNow = (job: DatedJob, studio: Studio, now: LocalMinute, staffOn: StaffOn): JobNow => {
  const plan = replan(job.tasks, { ...studio, people: job.people }, job.done, now, [], {
    ...leftBy([], studio, staffOn),
  })
  if (!plan.ok) return asDated(job)
  const { date, minute } = plan.value.readyAt
  const ready = { date, minute }
  const laterBy = Math.max(0, minutesBetween(job.ready, ready))
  const late = laterBy >= LATE_MINUTES
  return {
    ...asDated(job),
    kind: late ? 'late' : 'kept',
    taken: takenBy(plan.value),
    ready: late ? ready : job.ready,
    laterBy: late ? laterBy : 0,
  }
}

/** Whether two jobs were already dated against each other: somebody meant it so. */
const meant = (
  a: DatedJob,
  b: DatedJob,
  resource: Shared,
  studio: Studio,
  staffOn: StaffOn,
): boolean =>
  conflictsOf(
    { job: a.job, plan: a.booked },
    [{ job: b.job, plan: b.booked }],
    studio,
    staffOn,
  ).some((c) => c.resource === resource)

/**
 * The dated jobs as they come to stand now: what is in hand is reckoned anew from what was done, and
 * a job that no longer finds its people, bay or lift because another is late moves to the first
 * moment at which it does, with all that hangs on it. Jobs dated against each other on purpose stay.
 */
export const followOn = (
  jobs: readonly DatedJob[],
  studio: Studio,
  now: LocalMinute,
  staffOn: StaffOn,
): readonly JobNow[] => {
  const order = [...jobs].sort(
    (a, b) =>
      Number(b.stage === 'begun') - Number(a.stage === 'begun') ||
      (a.start < b.start ? -1 : a.start > b.start ? 1 : 0) ||
      a.startMinute - b.startMinute ||
      (a.job < b.job ? -1 : 1),
  )
  const byId = new Map(jobs.map((j) => [j.job, j]))
  const out: JobNow[] = []
  for (const job of order) {
    if (job.stage === 'over') {
      out.push({ ...asDated(job), taken: NOTHING })
      continue
    }
    if (job.stage === 'begun' || job.start < now.date) {
      out.push(fromNow(job, studio, now, staffOn))
      continue
    }
    const others: readonly Booking[] = out.map((o) => ({ job: o.job, plan: o.taken }))
    const own = { job: job.job, plan: job.booked }
    const because = conflictsOf(own, others, studio, staffOn).flatMap((c) =>
      c.jobs.flatMap((id) => {
        const other = out.find((o) => o.job === id)
        const was = byId.get(id)
        if (!other || !was || other.kind === 'kept') return []
        return meant(job, was, c.resource, studio, staffOn)
          ? []
          : [{ job: id, resource: c.resource }]
      }),
    )
    if (because.length === 0) {
      out.push(asDated(job))
      continue
    }
    const begin = { start: job.start, startMinute: job.startMinute }
    const found = firstFree(job.job, job.tasks, studio, job.people, begin, others, staffOn)
    if (found === null) {
      out.push(asDated(job))
      continue
    }
    const seen = new Map(because.map((b) => [`${b.job} ${b.resource}`, b]))
    out.push({
      job: job.job,
      kind: 'moved',
      ...found.begin,
      taken: found.taken,
      ready: found.ready,
      laterBy: Math.max(0, minutesBetween(job.ready, found.ready)),
      because: [...seen.values()],
    })
  }
  return out
}
