import { tails } from './critical-path'
import type { Arc, Network } from './network'
import { type Studio, type Task, taskSpan } from './task'
import { dayOf, utcOfEnd, type WorkingAxis, workAfter } from './working-axis'

/** A job made ready for planning: tasks by index on the studio's axis of working minutes. */
export type JobModel = {
  readonly tasks: readonly Task[]
  readonly network: Network
  readonly axis: WorkingAxis
  /** Working minutes of each task for one person, and for the largest crew it can use. */
  readonly alone: readonly number[]
  readonly together: readonly number[]
  /** Tail of each task in working minutes, elapsed lags scaled by the share of working time. */
  readonly tail: readonly number[]
  /** Working minute before which a task cannot start, whatever its predecessors (0 when none). */
  readonly notBefore: readonly number[]
  /** People there on the day with this index of the axis. */
  readonly peopleOn: (day: number) => number
  /** Longest a task that must not pause can run within one day: one person at a hand or machine task. */
  readonly longestDay: number
}

const weekMinutes = (studio: Studio): number[] =>
  studio.week.map((hours) => {
    const open = hours.reduce((sum, span) => sum + span.to - span.from, 0)
    return Math.max(0, Math.min(open, studio.dayCapMinutes) - studio.setUpMinutesPerDay)
  })

/** The model of a job; `notBefore` holds working minutes per task. */
export const makeModel = (
  tasks: readonly Task[],
  network: Network,
  axis: WorkingAxis,
  notBefore: readonly number[],
  peopleOn: (day: number) => number,
): JobModel => {
  const alone = tasks.map((task) => taskSpan(task.minutes, 1))
  const together = tasks.map((task) =>
    taskSpan(task.minutes, task.outside === true ? 1 : task.crewMax),
  )
  const week = weekMinutes(axis.studio)
  const share = week.reduce((sum, minutes) => sum + minutes, 0) / (7 * 1440)
  const working: Arc[][] = tasks.map(() => [])
  for (const [task, { after }] of tasks.entries())
    for (const [k, { lag, lagKind }] of after.entries()) {
      const from = network.before[task]![k]!.task
      working[from]!.push({ task, lag: lagKind === 'elapsed' ? lag * share : lag })
    }
  const tail = tails(alone, { ...network, next: working })
  const longestDay = week.reduce((most, minutes) => Math.max(most, minutes), 0)
  return { tasks, network, axis, alone, together, tail, notBefore, peopleOn, longestDay }
}

/** The same job with every task's minutes times `factor`. */
export const stretched = (model: JobModel, factor: number): JobModel => {
  const tasks = model.tasks.map((task) => ({ ...task, minutes: task.minutes * factor }))
  return makeModel(tasks, model.network, model.axis, model.notBefore, model.peopleOn)
}

/** Working minute at which the k-th predecessor of a task lets it start. */
export const arcRelease = (model: JobModel, task: number, k: number, end: number): number => {
  const link = model.tasks[task]!.after[k]!
  if (link.lag <= 0) return end
  if (link.lagKind === 'working') return end + link.lag
  return workAfter(model.axis, utcOfEnd(model.axis, end) + link.lag)
}

/** Working minute from which a task may start, once the ends of its predecessors are known. */
export const releaseOf = (model: JobModel, task: number, ends: readonly number[]): number => {
  let release = model.notBefore[task]!
  for (const [k, arc] of model.network.before[task]!.entries()) {
    const from = arcRelease(model, task, k, ends[arc.task]!)
    if (from > release) release = from
  }
  return release
}

/** Start, not before `from`, of a task that must end the same day; long ones start with a day. */
export const sameDayStart = (model: JobModel, from: number, span: number): number => {
  const { axis } = model
  let start = from
  for (;;) {
    const day = dayOf(axis, start)
    const begins = day === 0 ? 0 : axis.dayEnd[day - 1]!
    if (span > model.longestDay ? start === begins : start + span <= axis.dayEnd[day]!) return start
    start = axis.dayEnd[day]!
  }
}

/** For each task the working minutes people spend on it and on everything that must come before. */
const workUpTo = (model: JobModel): number[] => {
  const own = model.alone.map((span, i) => (model.tasks[i]!.outside === true ? 0 : span))
  const size = own.length
  const earlier = new Uint8Array(size * size)
  const sums = [...own]
  for (const task of model.network.order) {
    const row = task * size
    for (const arc of model.network.before[task]!) {
      earlier[row + arc.task] = 1
      for (let k = 0; k < size; k++) earlier[row + k]! |= earlier[arc.task * size + k]!
    }
    for (let k = 0; k < size; k++) if (earlier[row + k] === 1) sums[task]! += own[k]!
  }
  return sums
}

/**
 * Working minute no plan can be ready before: precedence, lags and nights, each task only after all
 * earlier work shared out among `people`, and machine work by its daily limit.
 */
export const readyBound = (model: JobModel, people: number): number => {
  const spans = people > 1 ? model.together : model.alone
  const ends = spans.map(() => 0)
  const upTo = workUpTo(model)
  let bound = 0
  let work = 0
  let machine = 0
  for (const task of model.network.order) {
    const { pausable, outside, machine: byMachine } = model.tasks[task]!
    const span = spans[task]!
    const shared = Math.ceil(upTo[task]! / people) - span
    const from = Math.max(releaseOf(model, task, ends), outside === true ? 0 : shared)
    const start = pausable || span === 0 ? from : sameDayStart(model, from, span)
    ends[task] = start + span
    bound = Math.max(bound, ends[task])
    if (outside === true) continue
    work += model.alone[task]!
    if (byMachine) machine += model.alone[task]!
  }
  const { axis } = model
  const perDay = people * axis.studio.machineMinutesPerPersonDay
  const fullDays = machine > 0 && perDay > 0 ? Math.ceil(machine / perDay) - 1 : 0
  if (fullDays > 0) {
    while (axis.dayEnd.length < fullDays) dayOf(axis, axis.total)
    bound = Math.max(bound, axis.dayEnd[fullDays - 1]! + 1)
  }
  return Math.max(bound, Math.ceil(work / people))
}
