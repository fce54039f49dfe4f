import { isoWeekday, parseDay, type Zone } from '../../kernel/calendar'
import { DAY_MINUTES, toUtcMinute } from '../../kernel/calendar-zone'
import { err, type Result } from '../../kernel/result'
import type { Studio, Window } from './task'

/**
 * Working minutes of the studio counted from the start of the job, nights, breaks and set-up left
 * out. Piece k covers [work[k], work[k] + span[k]) and begins at UTC minute utc[k]; day d begins at
 * piece firstPiece[d]. Grows day by day as the plan needs it.
 */
export type WorkingAxis = {
  readonly studio: Studio
  readonly work: number[]
  readonly utc: number[]
  readonly span: number[]
  readonly firstPiece: number[]
  readonly dayNo: number[]
  /** Working minute at which each day ends. */
  readonly dayEnd: number[]
  /** UTC minute at which each day's set-up begins. */
  readonly setUpFrom: number[]
  /** Minutes of each day's set-up. */
  readonly setUp: number[]
  /** Minutes of set-up of the first day; the later ones are the studio's. */
  readonly firstSetUp: number
  /** Hours of one day instead of the week's. */
  readonly hoursOn: HoursOn | undefined
  readonly daysOff: ReadonlySet<number>
  readonly firstMinute: number
  total: number
  nextDay: number
}

/** Hours of the day with this number, ascending and disjoint; none is a day without work. */
export type HoursOn = (dayNo: number) => readonly Window[]

/** A plan ends in error rather than run on when no working day comes within this many days. */
const LONGEST_GAP = 400
/** Nor does it run on when the job itself takes more working days than this. */
const MOST_DAYS = 1000

/** Pieces [from, to) of one local day after the set-up and up to the day's cap, as UTC minutes. */
const dayPieces = (
  studio: Studio,
  hoursOfDay: readonly Window[],
  dayNo: number,
  firstMinute: number,
  setUpMinutes: number,
) => {
  const zone: Zone = studio.zone
  const pieces: { from: number; to: number }[] = []
  let setUp = setUpMinutes
  let cap = studio.dayCapMinutes
  let setUpFrom = -1
  for (const hours of hoursOfDay) {
    if (hours.to <= firstMinute) continue
    const from = toUtcMinute(zone, dayNo * DAY_MINUTES + Math.max(hours.from, firstMinute))
    const end = toUtcMinute(zone, dayNo * DAY_MINUTES + hours.to)
    const to = Math.min(end, from + cap)
    if (to <= from) continue
    if (setUpFrom < 0) setUpFrom = from
    cap -= to - from
    const late = Math.min(setUp, to - from)
    setUp -= late
    if (from + late < to) pieces.push({ from: from + late, to })
  }
  return { pieces, setUpFrom }
}

/** An axis starting at the given local day number and minute of day, still without a day. */
export const makeAxis = (
  studio: Studio,
  dayNo: number,
  firstMinute: number,
  firstSetUp = studio.setUpMinutesPerDay,
  hoursOn?: HoursOn,
): WorkingAxis => {
  const daysOff = new Set<number>()
  for (const text of studio.daysOff) {
    const day = parseDay(text)
    if (day.ok) daysOff.add(day.value)
  }
  const empty = {
    work: [],
    utc: [],
    span: [],
    firstPiece: [],
    dayNo: [],
    dayEnd: [],
    setUpFrom: [],
    setUp: [],
  }
  const begin = { firstMinute, firstSetUp, hoursOn, total: 0, nextDay: dayNo }
  return { studio, ...empty, daysOff, ...begin }
}

/** Adds the next working day. False when none comes (no hours in the week, or all days off). */
export const growAxis = (axis: WorkingAxis): boolean => {
  if (axis.dayNo.length >= MOST_DAYS) return false
  for (let tried = 0; tried < LONGEST_GAP; tried++) {
    const dayNo = axis.nextDay++
    const isStart = axis.dayNo.length === 0 && tried === 0
    const firstMinute = isStart ? axis.firstMinute : 0
    const setUpMinutes = isStart ? axis.firstSetUp : axis.studio.setUpMinutesPerDay
    if (axis.daysOff.has(dayNo)) continue
    const hours = axis.hoursOn?.(dayNo) ?? axis.studio.week[isoWeekday(dayNo) - 1] ?? []
    const { pieces, setUpFrom } = dayPieces(axis.studio, hours, dayNo, firstMinute, setUpMinutes)
    if (pieces.length === 0) continue
    axis.firstPiece.push(axis.work.length)
    axis.dayNo.push(dayNo)
    axis.setUpFrom.push(setUpFrom)
    axis.setUp.push(setUpMinutes)
    for (const piece of pieces) {
      axis.work.push(axis.total)
      axis.utc.push(piece.from)
      axis.span.push(piece.to - piece.from)
      axis.total += piece.to - piece.from
    }
    axis.dayEnd.push(axis.total)
    return true
  }
  return false
}

/** Thrown when the axis cannot grow any further; orNoTime turns it into an error. */
export class NoWorkingTime extends Error {}

/** Runs a piece of planning; 'no-working-time' when the studio's hours never suffice for it. */
export const orNoTime = <T, E>(work: () => Result<T, E>): Result<T, E | 'no-working-time'> => {
  try {
    return work()
  } catch (problem) {
    if (problem instanceof NoWorkingTime) return err('no-working-time')
    throw problem
  }
}

const reach = (axis: WorkingAxis, work: number) => {
  while (axis.total <= work) if (!growAxis(axis)) throw new NoWorkingTime()
}

/** Index of the day in which a working minute lies. */
export const dayOf = (axis: WorkingAxis, work: number): number => {
  reach(axis, work)
  let low = 0
  let high = axis.dayEnd.length - 1
  while (low < high) {
    const middle = (low + high) >> 1
    if (axis.dayEnd[middle]! > work) high = middle
    else low = middle + 1
  }
  return low
}

/** Index of the piece in which a working minute lies. */
export const pieceOf = (axis: WorkingAxis, work: number): number => {
  reach(axis, work)
  let low = 0
  let high = axis.work.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (axis.work[middle]! <= work) low = middle
    else high = middle - 1
  }
  return low
}

/** UTC minute at which the given working minute begins. */
export const utcOfStart = (axis: WorkingAxis, work: number): number => {
  const k = pieceOf(axis, work)
  return axis.utc[k]! + work - axis.work[k]!
}

/** UTC minute at which the working time up to `work` is over: before a night, not after it. */
export const utcOfEnd = (axis: WorkingAxis, work: number): number => {
  if (work <= 0) return utcOfStart(axis, 0)
  return utcOfStart(axis, work - 1) + 1
}

/** First working minute that begins at or after a UTC minute. */
export const workAfter = (axis: WorkingAxis, utcMinute: number): number => {
  let last = axis.work.length - 1
  while (last < 0 || axis.utc[last]! + axis.span[last]! <= utcMinute) {
    if (!growAxis(axis)) throw new NoWorkingTime()
    last = axis.work.length - 1
  }
  let k = last
  while (k > 0 && axis.utc[k - 1]! + axis.span[k - 1]! > utcMinute) k--
  return axis.work[k]! + Math.max(0, utcMinute - axis.utc[k]!)
}
