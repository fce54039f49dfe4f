import { inHandOf, stepsById, type WantedItem } from '../../jobsheet/in-hand'
import { parseDay } from '../../kernel/calendar'
import type { JobNow, Taken } from '../../quote/plan'
import { addDaysText } from '../../quote/working-day'
import { wantedText } from '../../words/wanted-text'
import type { Studio } from '../route'
import { carName, clashesNow, conflictText, type DatedCar, jobsNow } from './days'
import { todayOf } from './estimating'
import { workDays } from './work-days'

/** One thing of a day: what kind it is, the car it is about, and a sentence. */
export type DayItem = {
  readonly kind: 'conflict' | 'away' | 'order' | 'comes' | 'work' | 'dries' | 'ready' | 'unplanned'
  readonly docket: string | null
  readonly text: string
}
export type DayOut = { readonly date: string; readonly items: readonly DayItem[] }

/** A job that is late, or moves because another is. */
export type LateOut = {
  readonly docket: string
  readonly kind: 'late' | 'moved'
  readonly text: string
  readonly start: string
  readonly startMinute: number
  readonly rev: number
}

export type DaysView = {
  readonly today: string
  readonly days: readonly DayOut[]
  readonly late: readonly LateOut[]
}

/** Days shown ahead; what lies further off is named by its own docket (own estimate). */
const AHEAD = 60
const ORDER: readonly DayItem['kind'][] = [
  'conflict',
  'away',
  'order',
  'unplanned',
  'comes',
  'work',
  'dries',
  'ready',
]
/** A wait shorter than this is no drying worth a line (own estimate). */
const DRYING = 60

/** What a dated car still waits for. */
export const wantedFor = (car: DatedCar): readonly WantedItem[] => {
  const { dated, bench } = car.docket
  if (!dated) return []
  const answer = car.docket.answers['locking-key']
  return inHandOf(
    {
      steps: stepsById((dated.planned?.tasks ?? []).map((t) => t.id)),
      lockingKey: answer && 'value' in answer ? answer.value : undefined,
      trades: dated.planned?.trades,
    },
    { ...bench.inHand, done: (step) => bench.steps[step]?.state === 'done' },
    dated.start,
  )
}

type Moment = { readonly date: string; readonly minute: number }
const before = (a: Moment, b: Moment): boolean =>
  a.date < b.date || (a.date === b.date && a.minute < b.minute)

const minuteOf = ({ date, minute }: Moment): number => {
  const day = parseDay(date)
  return (day.ok ? day.value : 0) * 1440 + minute
}

/** When a car keeps the bay with nobody at work on it: from the last work in a hold to its end. */
const dryingOf = (taken: Taken): readonly { readonly from: Moment; readonly until: Moment }[] =>
  taken.bay.flatMap(({ from, until }) => {
    const ends = taken.work
      .map((w) => ({ date: w.date, minute: w.to }))
      .filter((end) => !before(end, from) && !before(until, end))
    const last = ends.reduce<Moment>((most, end) => (before(most, end) ? end : most), from)
    return minuteOf(until) - minuteOf(last) >= DRYING ? [{ from: last, until }] : []
  })

const lateOf = (cars: readonly DatedCar[], job: JobNow, studio: Studio): LateOut | null => {
  const car = cars.find((c) => c.head.docket === job.job)
  if (job.kind === 'kept' || !car?.job) return null
  const { words } = studio
  const notBrought = car.job.stage === 'waiting' && job.kind === 'late'
  const shared = {
    car: carName(cars, job.job),
    was: car.job.ready.date,
    wasTime: car.job.ready.minute,
    ready: job.ready.date,
    readyTime: job.ready.minute,
  }
  const text =
    job.kind === 'late'
      ? words.say(notBrought ? 'days.not-brought' : 'days.late', {
          ...shared,
          start: car.job.start,
        })
      : words.say('days.moved', {
          ...shared,
          from: car.job.start,
          start: job.start,
          time: job.startMinute,
          at: words.say(job.startMinute > 0 ? 'days.at' : 'days.at-opening', {
            time: job.startMinute,
          }),
          why: [...new Set(job.because.map((b) => b.resource))].map((r) => `days.lacks.${r}`),
          cars: [...new Set(job.because.map((b) => carName(cars, b.job)))],
        })
  return {
    docket: job.job,
    kind: job.kind,
    text,
    start: job.start,
    startMinute: job.startMinute,
    rev: car.head.rev,
  }
}

const wantedItems = (
  car: DatedCar,
  name: string,
  today: string,
  studio: Studio,
): readonly (readonly [string, DayItem])[] =>
  wantedFor(car).flatMap((w) => {
    if (w.state !== 'wanted' || w.orderBy === null) return []
    const thing = w.thing ?? wantedText(w.item, studio.words)
    const overdue = w.orderBy < today
    const say = overdue ? 'days.order.late' : 'days.order'
    const text = studio.words.say(w.what === 'key' ? 'days.order.key' : say, {
      thing,
      car: name,
      date: w.orderBy,
    })
    return [
      [overdue ? today : w.orderBy, { kind: 'order', docket: car.head.docket, text }] as const,
    ]
  })

const jobItems = (
  car: DatedCar,
  job: JobNow,
  name: string,
  studio: Studio,
): readonly (readonly [string, DayItem])[] => {
  const { words } = studio
  const docket = car.head.docket
  const item = (kind: DayItem['kind'], key: string, params: object): DayItem => ({
    kind,
    docket,
    text: words.say(key, { car: name, ...params } as Record<string, string | number>),
  })
  const title = car.head.title
  const comes =
    car.job?.stage === 'waiting'
      ? [
          [
            job.start,
            job.startMinute > 0
              ? item('comes', 'days.comes.at', { title, time: job.startMinute })
              : item('comes', 'days.comes', { title }),
          ] as const,
        ]
      : []
  return [
    ...comes,
    ...workDays(job.taken.work).map(
      ({ date, from, to, people }) =>
        [date, item('work', 'days.work', { from, to, people })] as const,
    ),
    ...dryingOf(job.taken).map(
      (d) =>
        [
          d.from.date,
          item('dries', 'days.dries', { date: d.until.date, time: d.until.minute }),
        ] as const,
    ),
    ...(car.job?.stage === 'over'
      ? []
      : [[job.ready.date, item('ready', 'days.ready', { time: job.ready.minute })] as const]),
  ]
}

/** The days from today on, each with what happens on it. */
export const daysView = (
  cars: readonly DatedCar[],
  studio: Studio,
  now: number,
): DaysView & { readonly jobs: readonly JobNow[] } => {
  const today = todayOf(studio, now)
  const end = addDaysText(today, AHEAD)
  const jobs = jobsNow(cars, studio, now)
  const byDate = new Map<string, DayItem[]>()
  const add = (date: string, item: DayItem): void => {
    // What was to happen before today and did not stands on today's list.
    const on = date < today && item.kind !== 'work' ? today : date
    if (on < today || on > end) return
    const known = byDate.get(on)
    if (known) known.push(item)
    else byDate.set(on, [item])
  }
  for (const car of cars) {
    const name = carName(cars, car.head.docket)
    const job = jobs.find((j) => j.job === car.head.docket)
    if (job) for (const [date, item] of jobItems(car, job, name, studio)) add(date, item)
    else if (car.head.jobDate)
      add(car.head.jobDate, {
        kind: 'unplanned',
        docket: car.head.docket,
        text: studio.words.say('days.unplanned', { car: name, title: car.head.title }),
      })
    for (const [date, item] of wantedItems(car, name, today, studio)) add(date, item)
  }
  for (const conflict of clashesNow(jobs, studio))
    if (conflict.date >= today)
      add(conflict.date, {
        kind: 'conflict',
        docket: null,
        text: conflictText(studio, cars, conflict),
      })
  for (const absence of studio.profile.absences ?? []) {
    let date = absence.from < today ? today : absence.from
    for (; date <= absence.to && date <= end; date = addDaysText(date, 1))
      add(date, {
        kind: 'away',
        docket: null,
        text: studio.words.say('days.away', { name: absence.name }),
      })
  }
  return {
    today,
    jobs,
    days: [...byDate]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([date, items]) => ({
        date,
        items: items.sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind)),
      })),
    late: jobs.flatMap((j) => lateOf(cars, j, studio) ?? []),
  }
}
