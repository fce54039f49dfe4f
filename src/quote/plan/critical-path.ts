import { ok, type Result } from '../../kernel/result'
import { type Linked, linkTasks, type Network, type NetworkError } from './network'

export type TaskTimes = {
  readonly id: string
  readonly earliestStart: number
  readonly earliestFinish: number
  readonly latestStart: number
  readonly latestFinish: number
  readonly slack: number
}
export type CriticalPath = {
  readonly length: number
  readonly times: readonly TaskTimes[]
  readonly critical: readonly string[]
}

/** Earliest start of every task when nothing but precedence and lags holds it; unit as minutes. */
export const earliestStarts = (spans: readonly number[], network: Network): number[] => {
  const starts = spans.map(() => 0)
  for (const task of network.order) {
    for (const arc of network.before[task]!) {
      starts[task] = Math.max(starts[task]!, starts[arc.task]! + spans[arc.task]! + arc.lag)
    }
  }
  return starts
}

/** Length of the longest way from a task's start to the end of all, its own span included. */
export const tails = (spans: readonly number[], network: Network): number[] => {
  const tail = [...spans]
  for (let i = network.order.length - 1; i >= 0; i--) {
    const task = network.order[i]!
    for (const arc of network.next[task]!) {
      tail[task] = Math.max(tail[task]!, spans[task]! + arc.lag + tail[arc.task]!)
    }
  }
  return tail
}

/**
 * Critical path with least lags between finish and start, resources ignored (Kelley and Walker 1959).
 * Critical tasks have no slack, listed in order of earliest start. Errors as linkTasks.
 */
export const criticalPath = (tasks: readonly Linked[]): Result<CriticalPath, NetworkError> => {
  const linked = linkTasks(tasks)
  if (!linked.ok) return linked
  const spans = tasks.map((task) => task.minutes)
  const starts = earliestStarts(spans, linked.value)
  const tail = tails(spans, linked.value)
  let length = 0
  for (const [i, span] of spans.entries()) length = Math.max(length, starts[i]! + span)
  const times = tasks.map((task, i) => {
    const latestStart = length - tail[i]!
    const earliestStart = starts[i]!
    const slack = latestStart - earliestStart
    const earliestFinish = earliestStart + task.minutes
    const latestFinish = latestStart + task.minutes
    return { id: task.id, earliestStart, earliestFinish, latestStart, latestFinish, slack }
  })
  const critical = linked.value.order.filter((i) => times[i]!.slack <= 1e-9)
  critical.sort((a, b) => starts[a]! - starts[b]!)
  return ok({ length, times, critical: critical.map((i) => tasks[i]!.id) })
}
