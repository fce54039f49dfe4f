import { formatDay } from '../../kernel/calendar'
import {
  DAY_MINUTES,
  isoOfMinute,
  type LocalMinute,
  splitLocal,
  toLocalMinute,
} from '../../kernel/calendar-zone'
import { criticalTasks } from './critical-tasks'
import type { Block, Drying, Hold, JobPlan, Moment, PlanDay } from './job-plan'
import { joinSpans, type TimeSpan } from './join-spans'
import type { JobModel } from './model'
import type { Part, Placed } from './place'
import { dayOf, pieceOf, utcOfEnd, utcOfStart } from './working-axis'

type OpenDay = { readonly blocks: Block[]; readonly drying: Drying[]; readonly people: Set<number> }
/** Days by index, and the spans in UTC minutes in which the car keeps bay and lift. */
type Sheet = {
  readonly days: Map<number, OpenDay>
  readonly bay: TimeSpan[]
  readonly lift: TimeSpan[]
}

const localOf = (model: JobModel, utc: number): LocalMinute =>
  splitLocal(toLocalMinute(model.axis.studio.zone, utc))

const dayAt = (sheet: Sheet, day: number): OpenDay => {
  const known = sheet.days.get(day)
  if (known) return known
  const fresh = { blocks: [], drying: [], people: new Set<number>() }
  sheet.days.set(day, fresh)
  return fresh
}

/** A part cut at breaks, as minutes of the local day, so that no block runs through one. */
const cutAtBreaks = (model: JobModel, part: Part): { from: number; to: number }[] => {
  const { axis } = model
  const zone = axis.studio.zone
  const midnight = axis.dayNo[dayOf(axis, part.from)]! * DAY_MINUTES
  const cuts: { from: number; to: number }[] = []
  for (let k = pieceOf(axis, part.from); k < axis.work.length && axis.work[k]! < part.to; k++) {
    const shift = axis.utc[k]! - axis.work[k]!
    const from = Math.max(part.from, axis.work[k]!) + shift
    const to = Math.min(part.to, axis.work[k]! + axis.span[k]!) + shift
    cuts.push({
      from: toLocalMinute(zone, from) - midnight,
      to: toLocalMinute(zone, to - 1) + 1 - midnight,
    })
  }
  return cuts
}

const addBlocks = (model: JobModel, sheet: Sheet, index: number, placed: Placed) => {
  const task = model.tasks[index]!
  const cuts = placed.parts.map((part) => cutAtBreaks(model, part))
  const of = cuts.reduce((sum, list) => sum + list.length, 0)
  let n = 0
  for (const [k, part] of placed.parts.entries()) {
    const day = dayAt(sheet, dayOf(model.axis, part.from))
    for (const person of part.people) day.people.add(person)
    for (const cut of cuts[k]!) {
      n++
      const block = { ...cut, people: part.people, task: task.id }
      day.blocks.push(of > 1 ? { ...block, part: { n, of } } : block)
    }
  }
  if (placed.parts.length === 0) return
  const span = {
    from: utcOfStart(model.axis, placed.start),
    to: utcOfEnd(model.axis, placed.end),
  }
  if (task.needs.bay) sheet.bay.push(span)
  if (task.needs.lift) sheet.lift.push(span)
}

const addLags = (model: JobModel, sheet: Sheet, index: number, placed: readonly Placed[]) => {
  const { axis } = model
  for (const [k, link] of model.tasks[index]!.after.entries()) {
    if (link.lag <= 0) continue
    const end = placed[model.network.before[index]![k]!.task]!.end
    const from = utcOfEnd(axis, end)
    const to = link.lagKind === 'elapsed' ? from + link.lag : utcOfEnd(axis, end + link.lag)
    const until = localOf(model, to)
    const list = dayAt(sheet, end === 0 ? 0 : dayOf(axis, end - 1)).drying
    const same = list.some(
      (other) =>
        other.task === link.id &&
        other.block === link.block &&
        other.until.minute === until.minute &&
        other.until.date === until.date,
    )
    if (same) continue
    list.push({ task: link.id, from: localOf(model, from), until, block: link.block })
    if (link.block === 'bay') sheet.bay.push({ from, to })
  }
}

const planDay = (model: JobModel, index: number, day: OpenDay): PlanDay => {
  const { axis } = model
  day.blocks.sort((a, b) => a.from - b.from || (a.people[0] ?? -1) - (b.people[0] ?? -1))
  return {
    date: formatDay(axis.dayNo[index]!),
    setUp: {
      from: localOf(model, axis.setUpFrom[index]!).minute,
      minutes: day.people.size > 0 ? axis.setUp[index]! : 0,
      people: day.people.size,
    },
    blocks: day.blocks,
    drying: day.drying,
  }
}

/** UTC minute at which the last task of all is done. */
export const readyMinute = (model: JobModel, placed: readonly Placed[]): number => {
  let last = 0
  for (const task of placed) if (task.end > last) last = task.end
  return utcOfEnd(model.axis, last)
}

/** A UTC minute as the studio's local moment with its ISO instant. */
export const momentOf = (model: JobModel, utc: number): Moment => ({
  ...localOf(model, utc),
  utc: isoOfMinute(utc),
})

const idleOf = (placed: readonly Placed[]): number => {
  const busy = joinSpans(placed.flatMap((task) => task.parts))
  let idle = 0
  for (const [k, span] of busy.entries()) if (k > 0) idle += span.from - busy[k - 1]!.to
  return idle
}

/** Turns placed tasks into days, blocks and moments by the studio's local clock. */
export const dayPlan = (model: JobModel, placed: readonly Placed[]): JobPlan => {
  const { axis, tasks } = model
  const sheet: Sheet = { days: new Map(), bay: [], lift: [] }
  let personMinutes = 0
  for (const [i, task] of placed.entries()) {
    addBlocks(model, sheet, i, task)
    addLags(model, sheet, i, placed)
    for (const part of task.parts) personMinutes += (part.to - part.from) * part.people.length
  }
  const indexes = [...sheet.days.keys()].sort((a, b) => a - b)
  const days = indexes.map((index) => planDay(model, index, sheet.days.get(index)!))
  for (const { setUp } of days) personMinutes += setUp.minutes * setUp.people
  const first = indexes.find((index) => sheet.days.get(index)!.blocks.length > 0)
  const readyAt = readyMinute(model, placed)
  const startsAt = first === undefined ? readyAt : axis.setUpFrom[first]!
  const hold = (spans: readonly TimeSpan[]): Hold[] =>
    joinSpans(spans).map(({ from, to }) => ({
      from: localOf(model, from),
      until: localOf(model, to),
    }))
  return {
    days,
    startsAt: momentOf(model, startsAt),
    readyAt: momentOf(model, readyAt),
    personMinutes,
    elapsedMinutes: readyAt - startsAt,
    idleMinutes: idleOf(placed),
    critical: criticalTasks(model, placed).map((i) => tasks[i]!.id),
    holds: { bay: hold(sheet.bay), lift: hold(sheet.lift) },
  }
}
