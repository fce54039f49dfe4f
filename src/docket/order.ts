import { isBenchKind } from './kind-names'
import type { Line } from './line'

const byDevice = (a: Line, b: Line): number =>
  (a.n ?? a.seq) - (b.n ?? b.seq) || a.at - b.at || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)

/**
 * Bench lines in one fixed order whatever order they arrived in: each device keeps its own running
 * order, devices are merged by time, ties by the device's name.
 */
export const benchOrder = (lines: readonly Line[]): readonly Line[] => {
  const queues = new Map<string, Line[]>()
  for (const line of lines) {
    const device = line.device ?? ''
    const queue = queues.get(device)
    if (queue) queue.push(line)
    else queues.set(device, [line])
  }
  const names = [...queues.keys()].sort()
  for (const q of queues.values()) q.sort(byDevice)
  const merged: Line[] = []
  const next = new Map(names.map((name) => [name, 0]))
  for (;;) {
    let best: { name: string; line: Line } | undefined
    for (const name of names) {
      const line = queues.get(name)?.[next.get(name) ?? 0]
      if (line && (best === undefined || line.at < best.line.at)) best = { name, line }
    }
    if (best === undefined) return merged
    merged.push(best.line)
    next.set(best.name, (next.get(best.name) ?? 0) + 1)
  }
}

/** Office lines by place, bench lines in their fixed order; struck lines are taken out of both. */
export const sorted = (
  lines: readonly Line[],
): { office: readonly Line[]; bench: readonly Line[]; struck: ReadonlyMap<string, string> } => {
  const struck = new Map<string, string>()
  for (const line of lines)
    if (line.kind === 'struck') {
      const body = line.body as { line: string; why: string }
      const known = struck.get(body.line)
      if (known === undefined || body.why < known) struck.set(body.line, body.why)
    }
  const counted = lines.filter((l) => l.kind !== 'struck' && !struck.has(l.id))
  return {
    office: counted.filter((l) => !isBenchKind(l.kind)).sort((a, b) => a.seq - b.seq),
    bench: benchOrder(counted.filter((l) => isBenchKind(l.kind))),
    struck,
  }
}
