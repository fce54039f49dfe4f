import { type Docket, fold } from '../../docket/fold'
import { splitLocal, toLocalMinute } from '../../kernel/calendar-zone'
import {
  type Booking,
  bookings,
  type Conflict,
  type DatedJob,
  followOn,
  type JobNow,
} from '../../quote/plan'
import { staffOn } from '../../quote/studio-profile'
import { DAY_KINDS, selectDatedHeads, selectDatedLines } from '../../store/dated'
import type { Head } from '../../store/heads'
import type { StoredLine } from '../../store/lines'
import type { Studio } from '../route'

/** The dated cars with what their days are told from. */
export const daysLoad = () => ({
  datedHeads: selectDatedHeads(),
  datedLines: selectDatedLines(DAY_KINDS),
})

/** The same with every line, for an act that writes on them. */
export const daysLoadWhole = () => ({
  datedHeads: selectDatedHeads(),
  datedLines: selectDatedLines(),
})

type Loaded = { readonly datedHeads: readonly Head[]; readonly datedLines: readonly StoredLine[] }

/** A dated car: its head, what its lines fold to, and its job; null where it was dated without a plan. */
export type DatedCar = {
  readonly head: Head
  readonly lines: readonly StoredLine[]
  readonly docket: Docket
  readonly job: DatedJob | null
}

const STAGE: Readonly<Record<string, DatedJob['stage']>> = {
  dated: 'waiting',
  'on-bench': 'begun',
  held: 'begun',
  finished: 'over',
}

/** A step that is begun and not done has at least this share left (own estimate). */
const LEFT_AT_LEAST = 0.1

const localOf = (studio: Studio, at: number) =>
  splitLocal(toLocalMinute(studio.engine.zone, Math.floor(at / 60_000)))

const doneOf = (docket: Docket, studio: Studio, now: number, tasks: DatedJob['tasks']) =>
  tasks.flatMap((task) => {
    const record = docket.bench.steps[task.id]
    if (!record) return []
    if (record.state === 'done')
      return [{ id: task.id, minutes: task.minutes, finishedAt: localOf(studio, record.lastAt) }]
    const running =
      record.state === 'begun' ? Math.max(0, Math.floor((now - record.lastAt) / 60_000)) : 0
    const most = Math.floor(task.minutes * (1 - LEFT_AT_LEAST))
    return [{ id: task.id, minutes: Math.min(record.minutes + running, most) }]
  })

const jobOf = (head: Head, docket: Docket, studio: Studio, now: number): DatedJob | null => {
  const { dated } = docket
  const stage = STAGE[head.state]
  if (!dated?.planned || stage === undefined) return null
  const { tasks, taken, ready } = dated.planned
  return {
    job: head.docket,
    tasks,
    people: dated.people,
    start: dated.start,
    startMinute: dated.startMinute ?? 0,
    booked: taken,
    ready,
    stage,
    done: doneOf(docket, studio, now, tasks),
  }
}

/** Every dated car of the studio, by the day it comes. */
export const datedCars = (loaded: Loaded, studio: Studio, now: number): readonly DatedCar[] => {
  const byDocket = new Map<string, StoredLine[]>()
  for (const line of loaded.datedLines) {
    const known = byDocket.get(line.docket)
    if (known) known.push(line)
    else byDocket.set(line.docket, [line])
  }
  return loaded.datedHeads
    .map((head) => {
      const lines = byDocket.get(head.docket) ?? []
      const docket = fold(lines)
      return { head, lines, docket, job: jobOf(head, docket, studio, now) }
    })
    .sort((a, b) => ((a.head.jobDate ?? '') < (b.head.jobDate ?? '') ? -1 : 1))
}

/** The jobs as they come to stand now, with what is late and what moves for it. */
export const jobsNow = (
  cars: readonly DatedCar[],
  studio: Studio,
  now: number,
): readonly JobNow[] =>
  followOn(
    cars.flatMap((c) => c.job ?? []),
    studio.engine,
    localOf(studio, now),
    staffOn(studio.profile),
  )

/** What the other cars take, for one that is being dated. */
export const takenByOthers = (
  cars: readonly DatedCar[],
  except: string,
  studio: Studio,
  now: number,
): readonly Booking[] =>
  jobsNow(
    cars.filter((c) => c.head.docket !== except),
    studio,
    now,
  ).map((j) => ({ job: j.job, plan: j.taken }))

/** Where the jobs as they stand ask for more than there is. */
export const clashesNow = (jobs: readonly JobNow[], studio: Studio): readonly Conflict[] =>
  bookings(
    jobs.map((j) => ({ job: j.job, plan: j.taken })),
    studio.engine,
    staffOn(studio.profile),
  )

/** A car in one or two words for a sentence: its reference, or what it is. */
export const carName = (cars: readonly DatedCar[], docket: string): string => {
  const head = cars.find((c) => c.head.docket === docket)?.head
  return head?.reference ?? head?.title ?? docket
}

/** A conflict in words; `self` is left out of the cars it names. */
export const conflictText = (
  studio: Studio,
  cars: readonly DatedCar[],
  conflict: Conflict,
  self?: string,
): string => {
  const others = conflict.jobs.filter((j) => j !== self).map((j) => carName(cars, j))
  return studio.words.say(`conflict.${conflict.resource}${others.length === 0 ? '.alone' : ''}`, {
    date: conflict.date,
    from: conflict.from,
    to: conflict.to,
    needed: conflict.needed,
    available: conflict.available,
    cars: others,
  })
}
