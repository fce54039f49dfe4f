export type Times = { readonly p50: number; readonly p99: number; readonly max: number }

/** The value at a share of a sorted list. */
export const at = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN

/** Milliseconds of `runs` calls, after `warm` that do not count. */
export const timed = (runs: number, work: () => unknown, warm = runs): Times => {
  for (let i = 0; i < warm; i++) work()
  const all = Array.from({ length: runs }, () => {
    const began = performance.now()
    work()
    return performance.now() - began
  }).sort((a, b) => a - b)
  return { p50: at(all, 0.5), p99: at(all, 0.99), max: at(all, 1) }
}

/** The same for work that is waited for. */
export const timedAsync = async (
  runs: number,
  work: () => Promise<unknown>,
  warm = runs,
): Promise<Times> => {
  for (let i = 0; i < warm; i++) await work()
  const all: number[] = []
  for (let i = 0; i < runs; i++) {
    const began = performance.now()
    await work()
    all.push(performance.now() - began)
  }
  all.sort((a, b) => a - b)
  return { p50: at(all, 0.5), p99: at(all, 0.99), max: at(all, 1) }
}

/** Heap bytes one call leaves behind before anything is collected: the median of several. */
export const heapOf = (work: () => unknown): number => {
  const taken = Array.from({ length: 51 }, () => {
    const before = process.memoryUsage().heapUsed
    work()
    return process.memoryUsage().heapUsed - before
  })
  return taken.sort((a, b) => a - b)[25] ?? Number.NaN
}
