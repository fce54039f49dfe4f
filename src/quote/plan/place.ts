import { type JobModel, releaseOf } from './model'
import { type Board, freeUntil, makeBoard, nextChange, occupy } from './people-board'
import { SHORTEST_PART } from './task'
import { dayOf, NoWorkingTime } from './working-axis'

/** A stretch of work within one day, in working minutes. */
export type Part = {
  readonly from: number
  readonly to: number
  readonly people: readonly number[]
}
export type Placed = {
  readonly crew: number
  readonly release: number
  readonly start: number
  readonly end: number
  readonly parts: readonly Part[]
}
/** How many people each task gets: a fixed number per task, or a rule decided while placing. */
export type CrewRule = 'one' | 'most' | 'idle' | readonly number[]

const NOBODY: readonly number[] = []

type Attempt = { readonly start: number; readonly end: number; readonly parts: Part[] }

/** Machine minutes of a person on a day, those of the task being placed included. */
const machineUsed = (
  model: JobModel,
  board: Board,
  parts: readonly Part[],
  person: number,
  day: number,
): number => {
  let used = board.machine[person]![day] ?? 0
  for (const part of parts) {
    if (part.people.includes(person) && dayOf(model.axis, part.from) === day) {
      used += part.to - part.from
    }
  }
  return used
}

/** People who can work from `at` for the longest stretch of the day; nothing when too few can. */
const pickPeople = (
  model: JobModel,
  board: Board,
  task: number,
  crew: number,
  at: number,
  most: number,
  day: number,
  parts: readonly Part[],
): Part | undefined => {
  const limit = model.axis.studio.machineMinutesPerPersonDay
  const byMachine = model.tasks[task]!.machine
  const there = Math.min(board.from.length, model.peopleOn(day))
  const least = Math.min(most, SHORTEST_PART)
  const people: number[] = []
  const held = parts.at(-1)?.people ?? NOBODY
  let length = most
  for (let seat = 0; seat < crew; seat++) {
    let chosen = -1
    let chosenLength = 0
    for (let person = 0; person < there; person++) {
      if (people.includes(person)) continue
      const left = byMachine ? limit - machineUsed(model, board, parts, person, day) : most
      const own = Math.min(left, most)
      if (own < least || own < chosenLength) continue
      if (own === chosenLength && (held.includes(chosen) || !held.includes(person))) continue
      if (freeUntil(board, person, at) < at + own) continue
      chosen = person
      chosenLength = own
    }
    if (chosen < 0) return undefined
    people.push(chosen)
    if (chosenLength < length) length = chosenLength
  }
  if (crew > 1) people.sort((a, b) => a - b)
  return { from: at, to: at + length, people }
}

/** Earliest placing of one task with a crew from `release` on; nothing is booked yet. */
const attempt = (
  model: JobModel,
  board: Board,
  task: number,
  crew: number,
  release: number,
): Attempt => {
  const { axis } = model
  const { pausable, outside, machine } = model.tasks[task]!
  const span = crew > 1 ? model.together[task]! : model.alone[task]!
  if (span === 0) return { start: release, end: release, parts: [] }
  const limit = axis.studio.machineMinutesPerPersonDay
  const longest = machine ? Math.min(model.longestDay, limit) : model.longestDay
  const long = !pausable && span > longest
  let parts: Part[] = []
  let left = span
  let at = release
  let idleDays = 0
  while (left > 0) {
    const day = dayOf(axis, at)
    const dayEnd = axis.dayEnd[day]!
    const dayStart = day === 0 ? 0 : axis.dayEnd[day - 1]!
    const most = Math.min(left, dayEnd - at)
    const wrongTime =
      (parts.length === 0 && long && at > dayStart) ||
      (!pausable && !long && most < left) ||
      (most < left && most < SHORTEST_PART)
    const part = wrongTime
      ? undefined
      : outside === true
        ? { from: at, to: at + most, people: NOBODY }
        : pickPeople(model, board, task, crew, at, most, day, parts)
    if (part && (pausable || long || part.to - part.from === left)) {
      parts.push(part)
      left -= part.to - part.from
      at = part.to
      idleDays = 0
      continue
    }
    if (long && parts.length > 0 && at === dayStart) {
      // A long task that cannot go on the next morning has to begin again later.
      parts = []
      left = span
    }
    const next = wrongTime ? dayEnd : nextChange(board, at, dayEnd)
    if (next === dayEnd && ++idleDays > 400) throw new NoWorkingTime()
    at = next
  }
  return { start: parts[0]!.from, end: at, parts }
}

const crewFor = (model: JobModel, task: number, people: number): number =>
  model.tasks[task]!.outside === true ? 1 : Math.min(model.tasks[task]!.crewMax, people)

/** Whether some other task could use the second person at this moment. */
const otherWaits = (
  model: JobModel,
  order: readonly number[],
  after: number,
  ends: readonly number[],
  releases: number[],
  at: number,
): boolean => {
  for (let k = after + 1; k < order.length; k++) {
    const other = order[k]!
    if (model.alone[other] === 0 || model.tasks[other]!.outside === true) continue
    if (model.network.before[other]!.some((arc) => ends[arc.task]! < 0)) continue
    if (releases[other]! < 0) releases[other] = releaseOf(model, other, ends)
    if (releases[other]! <= at) return true
  }
  return false
}

/**
 * Serial placing of all tasks in a precedence-feasible order, each as early as people, machine limit
 * and nights allow. 'idle' gives a second person only where nobody else's work would wait for them.
 */
export const placeTasks = (
  model: JobModel,
  order: readonly number[],
  people: number,
  rule: CrewRule,
): { readonly placed: readonly Placed[]; readonly finish: number } => {
  const board = makeBoard(people)
  const ends = model.tasks.map(() => -1)
  const releases = model.tasks.map(() => -1)
  const placed: Placed[] = new Array(model.tasks.length)
  let finish = 0
  for (const [k, task] of order.entries()) {
    if (releases[task]! < 0) releases[task] = releaseOf(model, task, ends)
    const release = releases[task]!
    const most = crewFor(model, task, people)
    let crew = rule === 'one' ? 1 : typeof rule === 'string' ? most : Math.min(most, rule[task]!)
    let found = attempt(model, board, task, crew, release)
    if (crew > 1 && rule === 'idle') {
      const single = attempt(model, board, task, 1, release)
      if (single.end <= found.end || otherWaits(model, order, k, ends, releases, single.start)) {
        crew = 1
        found = single
      }
    }
    for (const part of found.parts) {
      const day = dayOf(model.axis, part.from)
      for (const person of part.people) {
        occupy(board, person, part.from, part.to)
        if (!model.tasks[task]!.machine) continue
        const used = board.machine[person]!
        used[day] = (used[day] ?? 0) + part.to - part.from
      }
    }
    ends[task] = found.end
    placed[task] = { crew, release, ...found }
    if (found.end > finish) finish = found.end
  }
  return { placed, finish }
}
