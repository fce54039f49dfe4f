import { arcRelease, type JobModel } from './model'
import type { Placed } from './place'

const shares = (a: Placed, b: Placed): boolean =>
  a.parts.some((part) => part.people.some((p) => b.parts.some((other) => other.people.includes(p))))

/**
 * Tasks that hold the ready time: from the last end backwards, each time what the start waited for,
 * a predecessor with its lag or the task after which one of the same people came free.
 */
export const criticalTasks = (model: JobModel, placed: readonly Placed[]): readonly number[] => {
  let finish = 0
  for (const task of placed) finish = Math.max(finish, task.end)
  const found = new Set<number>()
  const open: number[] = []
  const add = (task: number) => {
    if (found.has(task)) return
    found.add(task)
    open.push(task)
  }
  for (const [i, task] of placed.entries()) if (task.end === finish) add(i)
  while (open.length > 0) {
    const task = open.pop()!
    const own = placed[task]!
    if (own.start > own.release) {
      let last = -1
      for (const [i, other] of placed.entries()) {
        if (other.end > own.start || i === task || !shares(own, other)) continue
        if (last < 0 || other.end > placed[last]!.end) last = i
      }
      if (last >= 0 && placed[last]!.end > own.release) {
        add(last)
        continue
      }
    }
    for (const [k, arc] of model.network.before[task]!.entries()) {
      if (arcRelease(model, task, k, placed[arc.task]!.end) >= own.release) add(arc.task)
    }
  }
  return [...found].sort((a, b) => placed[a]!.start - placed[b]!.start || a - b)
}
