import { err, ok, type Result } from '../../kernel/result'
import { earliestStarts, tails } from './critical-path'
import { type Linked, linkTasks, type Network, type NetworkError } from './network'
import { book, clearProfile, earliestFit, makeProfile } from './profile'
import { smallRandom } from './small-random'
import { STARTS } from './task'

/** A task with what it takes of each renewable resource while it runs; whole minutes. */
export type Activity = Linked & { readonly demand: readonly number[] }
export type Schedule = {
  /** Start of each activity, in the order given. */
  readonly starts: readonly number[]
  readonly finish: number
  /** No schedule can be shorter: critical path and resource work. */
  readonly bound: number
  readonly optimal: boolean
  /** Number of forward passes made. */
  readonly passes: number
}
export type ScheduleError = NetworkError | 'over-capacity'

const SEED = 0x2545f491
// How far keys are shaken, and from which start on the best so far is (own estimate, tuned on j30).
const WIDE = 0.4
const NEAR = 0.3
const FROM_BEST = 8

/** Order of tasks by lowest key, predecessors always first. */
export const listOrder = (key: readonly number[], network: Network): number[] => {
  const missing = network.before.map((arcs) => arcs.length)
  const open: number[] = []
  for (const [i, count] of missing.entries()) if (count === 0) open.push(i)
  const order: number[] = []
  while (open.length > 0) {
    let at = 0
    for (let k = 1; k < open.length; k++) if (key[open[k]!]! < key[open[at]!]!) at = k
    const task = open[at]!
    open[at] = open[open.length - 1]!
    open.pop()
    order.push(task)
    for (const arc of network.next[task]!) if (--missing[arc.task]! === 0) open.push(arc.task)
  }
  return order
}

const mirrored = (network: Network): Network => ({
  before: network.next,
  next: network.before,
  order: [...network.order].reverse(),
})

const resourceBound = (
  spans: readonly number[],
  demand: readonly (readonly number[])[],
  capacity: readonly number[],
) => {
  let bound = 0
  for (const [r, available] of capacity.entries()) {
    let work = 0
    for (const [i, span] of spans.entries()) work += span * demand[i]![r]!
    if (work > 0) bound = Math.max(bound, Math.ceil(work / available))
  }
  return bound
}

/**
 * Shortest schedule found for a project with limited renewable resources: serial schedule generation
 * by latest finish, randomised starts, each improved by justification to both sides
 * (Valls, Ballestin and Quintanilla 2005), stopping as soon as the bound is met.
 * Errors: those of linkTasks, 'over-capacity' when one activity needs more than there is.
 */
export const schedule = (
  activities: readonly Activity[],
  capacity: readonly number[],
  options: { readonly starts?: number } = {},
): Result<Schedule, ScheduleError> => {
  const linked = linkTasks(activities)
  if (!linked.ok) return linked
  const demand = activities.map((activity) => activity.demand)
  if (demand.some((row) => capacity.some((c, r) => (row[r] ?? 0) > c))) return err('over-capacity')
  const forward = linked.value
  const backward = mirrored(forward)
  const spans = activities.map((activity) => activity.minutes)
  const tail = tails(spans, forward)
  const early = earliestStarts(spans, forward)
  let longest = 0
  for (const value of tail) longest = Math.max(longest, value)
  const bound = Math.max(longest, resourceBound(spans, demand, capacity))
  const latest = spans.map((span, i) => longest - tail[i]! + span)
  const profile = makeProfile(activities.length, capacity)
  let passes = 0
  const generate = (key: readonly number[], network: Network, starts: number[]): number => {
    clearProfile(profile, capacity)
    passes++
    let finish = 0
    for (const task of listOrder(key, network)) {
      let from = 0
      for (const arc of network.before[task]!) {
        from = Math.max(from, starts[arc.task]! + spans[arc.task]! + arc.lag)
      }
      const start = earliestFit(profile, from, spans[task]!, demand[task]!)
      book(profile, start, spans[task]!, demand[task]!)
      starts[task] = start
      finish = Math.max(finish, start + spans[task]!)
    }
    return finish
  }
  const random = smallRandom(SEED)
  const shaken = (key: readonly number[], by: number) =>
    key.map((value) => value + (random() - 0.5) * by)
  const ends = (starts: readonly number[]) => starts.map((start, i) => start + spans[i]!)
  const negative = (key: readonly number[]) => key.map((value) => -value)
  let best: readonly number[] = early
  let finish = Number.POSITIVE_INFINITY
  const keep = (starts: readonly number[], length: number) => {
    if (length >= finish) return
    finish = length
    best = [...starts]
  }
  const starts = spans.map(() => 0)
  const back = spans.map(() => 0)
  const most = Math.max(1, options.starts ?? STARTS)
  // Every second start is built from the end; the later ones shake the best schedule so far.
  for (let k = 0; k < most && finish > bound; k++) {
    let key: readonly number[] = k < 2 ? latest : shaken(latest, WIDE * longest)
    if (k >= FROM_BEST) key = shaken(ends(best), NEAR * finish)
    if (k % 2 === 1) {
      const byEarly = k === 1 ? early : shaken(early, WIDE * longest)
      generate(negative(k >= FROM_BEST ? key : byEarly), backward, back)
      key = negative(ends(back))
    }
    let length = generate(key, forward, starts)
    keep(starts, length)
    for (let shorter = true; shorter && finish > bound; ) {
      generate(negative(ends(starts)), backward, back)
      const again = generate(negative(ends(back)), forward, starts)
      keep(starts, again)
      shorter = again < length
      length = again
    }
  }
  return ok({ starts: best, finish, bound, optimal: finish === bound, passes })
}
