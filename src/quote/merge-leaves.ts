import type { ThreePoint } from './context'

/** What one world of a step or an event puts into the spread; `when` as in a world. */
export type Leaf = {
  readonly when: readonly (readonly [question: string, options: number])[]
  readonly chance: number
  readonly minutes: ThreePoint
  readonly money: ThreePoint
}

const samePoint = (a: ThreePoint, b: ThreePoint): boolean =>
  a === b || (a.optimistic === b.optimistic && a.mode === b.mode && a.pessimistic === b.pessimistic)

const sameNumbers = (a: Leaf, b: Leaf): boolean =>
  a.chance === b.chance &&
  (a.chance === 0 || (samePoint(a.minutes, b.minutes) && samePoint(a.money, b.money)))

/** The one place in which two conditions on the same questions differ; −1 when there is not just one. */
const differAt = (a: Leaf['when'], b: Leaf['when']): number => {
  if (a.length !== b.length) return -1
  let at = -1
  for (let i = 0; i < a.length; i++) {
    if (a[i]![0] !== b[i]![0]) return -1
    if (a[i]![1] === b[i]![1]) continue
    if (at >= 0) return -1
    at = i
  }
  return at
}

/**
 * The same leaves with neighbours of like numbers put together where they differ in one question only,
 * over and over. `all` gives every option of a question: a condition that holds for all of them goes.
 */
export const mergeLeaves = (
  leaves: readonly Leaf[],
  all: (question: string) => number,
): readonly Leaf[] => {
  const kept: Leaf[] = []
  for (const leaf of leaves) {
    let now = leaf
    for (;;) {
      const before = kept.at(-1)
      if (before === undefined || !sameNumbers(before, now)) break
      const at = differAt(before.when, now.when)
      if (at < 0) break
      const [question, options] = now.when[at]!
      const both = before.when[at]![1] | options
      const when =
        both === all(question)
          ? now.when.filter((_, i) => i !== at)
          : now.when.map((w, i) => (i === at ? ([question, both] as const) : w))
      now = { ...before, when }
      kept.pop()
    }
    kept.push(now)
  }
  return kept
}
