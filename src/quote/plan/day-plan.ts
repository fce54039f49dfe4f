import { formatDay } from '../../kernel/calendar'
import {
  DAY_MINUTES,
  isoOfMinute,
  type LocalMinute,
  splitLocal,
  toLocalMinute,
} from '../../kernel/calendar-zone'
import { criticalTasks } from './critical-tasks'
import type { JobModel } from './model'
import type { Placed } from './place'
import { dayOf, utcOfEnd, utcOfStart } from './working-axis'

/** Work on one task without a break; minutes of the local day; people by seat number from 0. */
export type Block = {
  readonly from: number
  readonly to: number
  readonly people: readonly number[]
  readonly task: string
  readonly part?: { readonly n: number; readonly of: number }
}
/** A lag running: nothing is done on what `task` left to dry or cure until then. */
export type Drying = {
  readonly task: string
  readonly from: LocalMinute
  readonly until: LocalMinute
  readonly block: 'bay' | 'car'
}
export type PlanDay = {
  readonly date: string
  readonly setUp: { readonly from: number; readonly minutes: number; readonly people: number }
  readonly blocks: readonly Block[]
  /** Lags that begin on this day. */
  readonly drying: readonly Drying[]
}
export type Moment = LocalMinute & { readonly utc: string }
export type Hold = { readonly from: LocalMinute; readonly until: LocalMinute }
export type JobPlan = {
  readonly days: readonly PlanDay[]
  readonly startsAt: Moment
  readonly readyAt: Moment
  /** All people's minutes, the daily set-up included; outside trades left out. */
  readonly personMinutes: number
  /** Clock minutes from the first set-up to ready. */
  readonly elapsedMinutes: number
  /** Working minutes between first start and ready in which nobody works on the car. */
  readonly idleMinutes: number
  /** Task ids that hold the ready time, in order. */
  readonly critical: readonly string[]
  /** When the car keeps a bay or a lift, nights between two parts included. */
  readonly holds: { readonly bay: readonly Hold[]; readonly lift: readonly Hold[] }
}

type Span = { from: number; to: number }

/** Joins spans that touch or overlap; sorted by start. */
const joined = (spans: readonly Span[]): Span[] => {
  const sorted = [...spans].sort((a, b) => a.from - b.from || a.to - b.to)
  const out: Span[] = []
  for (const span of sorted) {
    const last = out.at(-1)
    if (last && span.from <= last.to) last.to = Math.max(last.to, span.to)
    else out.push({ ...span })
  }
  return out
}

const idleOf = (placed: readonly Placed[]): number => {
  const busy = joined(placed.flatMap((task) => task.parts.map(({ from, to }) => ({ from, to }))))
  let idle = 0
  for (const [k, span] of busy.entries()) if (k > 0) idle += span.from - busy[k - 1]!.to
  return idle
}

/** The local pieces of a part: it is cut at breaks, so that no block runs through one. */
const blocksOf = (model: JobModel, from: number, to: number) => {
  const { axis } = model
  const zone = axis.studio.zone
  const cuts: { from: number; to: number; dayNo: number }[] = []
  for (const [k, work] of axis.work.entries()) {
    const low = Math.max(from, work)
    const high = Math.min(to, work + axis.span[k]!)
    if (low >= high) continue
    const start = toLocalMinute(zone, axis.utc[k]! + low - work)
    const end = toLocalMinute(zone, axis.utc[k]! + high - 1 - work) + 1
    const dayNo = Math.floor(start / DAY_MINUTES)
    cuts.push({ from: start - dayNo * DAY_MINUTES, to: end - dayNo * DAY_MINUTES, dayNo })
  }
  return cuts
}

/** Turns placed tasks into days, blocks and moments by the studio's local clock. */
export const dayPlan = (model: JobModel, placed: readonly Placed[]): JobPlan => {
  const { axis, tasks } = model
  const zone = axis.studio.zone
  const local = (utc: number) => splitLocal(toLocalMinute(zone, utc))
  const days = new Map<number, { blocks: Block[]; drying: Drying[]; people: Set<number> }>()
  const dayAt = (day: number) => {
    const known = days.get(day)
    if (known) return known
    const fresh = { blocks: [], drying: [], people: new Set<number>() }
    days.set(day, fresh)
    return fresh
  }
  const bay: Span[] = []
  const lift: Span[] = []
  let last = 0
  let lastUtc = utcOfStart(axis, 0)
  let first = Number.POSITIVE_INFINITY
  let crewed = 0
  for (const [i, task] of tasks.entries()) {
    const { parts, start, end } = placed[i]!
    const cuts = parts.flatMap((part) =>
      blocksOf(model, part.from, part.to).map((cut) => ({ ...cut, part })),
    )
    for (const [n, cut] of cuts.entries()) {
      const day = dayAt(dayOf(axis, cut.part.from))
      const of = cuts.length
      const { people } = cut.part
      const block = { from: cut.from, to: cut.to, people, task: task.id }
      day.blocks.push(of > 1 ? { ...block, part: { n: n + 1, of } } : block)
      for (const person of people) day.people.add(person)
    }
    for (const part of parts) crewed += (part.to - part.from) * part.people.length
    if (parts.length > 0) {
      const span = { from: utcOfStart(axis, start), to: utcOfEnd(axis, end) }
      if (task.needs.bay) bay.push(span)
      if (task.needs.lift) lift.push(span)
      first = Math.min(first, start)
    }
    for (const link of task.after) {
      const from = tasks.findIndex((other) => other.id === link.id)
      if (link.lag <= 0) continue
      const before = placed[from]!.end
      const ends = utcOfEnd(axis, before)
      const until = link.lagKind === 'elapsed' ? ends + link.lag : utcOfEnd(axis, before + link.lag)
      const drying = { task: link.id, from: local(ends), until: local(until), block: link.block }
      const list = dayAt(before === 0 ? 0 : dayOf(axis, before - 1)).drying
      const twin = list.find(
        (d) =>
          d.task === link.id &&
          d.until.date === drying.until.date &&
          d.until.minute === drying.until.minute,
      )
      if (!twin) list.push(drying)
      if (link.block === 'bay') bay.push({ from: ends, to: until })
    }
    if (end >= last) {
      last = end
      lastUtc = Math.max(lastUtc, utcOfEnd(axis, end))
    }
  }
  if (first === Number.POSITIVE_INFINITY) first = 0
  const firstUtc = tasks.length === 0 ? lastUtc : axis.setUpFrom[dayOf(axis, first)]!
  const sorted = [...days.keys()].sort((a, b) => a - b)
  let setUp = 0
  const out = sorted.map((index): PlanDay => {
    const day = days.get(index)!
    day.blocks.sort(
      (a, b) => a.from - b.from || (a.people[0] ?? -1) - (b.people[0] ?? -1) || a.to - b.to,
    )
    const minutes = day.people.size > 0 ? axis.studio.setUpMinutesPerDay : 0
    setUp += minutes * day.people.size
    const from = local(axis.setUpFrom[index]!).minute
    return {
      date: formatDay(axis.dayNo[index]!),
      setUp: { from, minutes, people: day.people.size },
      blocks: day.blocks,
      drying: day.drying,
    }
  })
  const moment = (utc: number): Moment => ({ ...local(utc), utc: isoOfMinute(utc) })
  const hold = (spans: readonly Span[]): Hold[] =>
    joined(spans).map((span) => ({ from: local(span.from), until: local(span.to) }))
  return {
    days: out,
    startsAt: moment(firstUtc),
    readyAt: moment(lastUtc),
    personMinutes: crewed + setUp,
    elapsedMinutes: lastUtc - firstUtc,
    idleMinutes: idleOf(placed),
    critical: criticalTasks(model, placed).map((i) => tasks[i]!.id),
    holds: { bay: hold(bay), lift: hold(lift) },
  }
}
