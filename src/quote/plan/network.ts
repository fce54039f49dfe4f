import { err, ok, type Result } from '../../kernel/result'

/** What a network needs of a task: an id, a length, and predecessors with a least lag. */
export type Linked = {
  readonly id: string
  readonly minutes: number
  readonly after: readonly { readonly id: string; readonly lag: number }[]
}
export type NetworkError = 'duplicate-task' | 'unknown-task' | 'cycle'

export type Arc = { readonly task: number; readonly lag: number }
/** Tasks by index, with predecessor and successor arcs and one topological order. */
export type Network = {
  readonly before: readonly (readonly Arc[])[]
  readonly next: readonly (readonly Arc[])[]
  readonly order: readonly number[]
}

/**
 * Index of a task list as a network; the order keeps the list's own order where it can.
 * Errors: 'duplicate-task', 'unknown-task' (a predecessor that is not in the list), 'cycle'.
 */
export const linkTasks = (tasks: readonly Linked[]): Result<Network, NetworkError> => {
  const index = new Map<string, number>()
  for (const [i, task] of tasks.entries()) index.set(task.id, i)
  if (index.size !== tasks.length) return err('duplicate-task')
  const before: Arc[][] = []
  const next: Arc[][] = tasks.map(() => [])
  for (const [i, task] of tasks.entries()) {
    const arcs: Arc[] = []
    for (const link of task.after) {
      const from = index.get(link.id)
      if (from === undefined) return err('unknown-task')
      arcs.push({ task: from, lag: link.lag })
      next[from]!.push({ task: i, lag: link.lag })
    }
    before.push(arcs)
  }
  const missing = before.map((arcs) => arcs.length)
  const order: number[] = []
  const ready = missing.flatMap((count, i) => (count === 0 ? [i] : []))
  while (ready.length > 0) {
    const task = ready.shift()!
    order.push(task)
    for (const arc of next[task]!) if (--missing[arc.task]! === 0) ready.push(arc.task)
  }
  return order.length === tasks.length ? ok({ before, next, order }) : err('cycle')
}
