import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Leaf, mergeLeaves } from './merge-leaves'

const QUESTIONS = ['a', 'b', 'c'] as const
const ALL = 0b111
const point = (n: number) => ({ optimistic: n, mode: n, pessimistic: n })

/** A rule that divides one question, or says a number. */
type Tree =
  | number
  | { readonly q: number; readonly yes: number; readonly parts: readonly [Tree, Tree] }
const { tree } = fc.letrec<{ tree: Tree }>((tie) => ({
  tree: fc.oneof(
    { maxDepth: 5, depthSize: 'large' },
    fc.nat(2),
    fc.record({
      q: fc.nat(2),
      yes: fc.integer({ min: 1, max: 6 }),
      parts: fc.tuple(tie('tree'), tie('tree')),
    }),
  ),
}))

/** Its leaves as worlds give them: in the order they are tried, each with what holds there. */
const leavesOf = (t: Tree, when: readonly (readonly [string, number])[] = []): readonly Leaf[] => {
  if (typeof t === 'number')
    return [{ when, chance: t === 2 ? 0 : 1, minutes: point(t), money: point(0) }]
  const q = QUESTIONS[t.q]!
  const open = when.find(([id]) => id === q)?.[1] ?? ALL
  const go = (options: number, part: Tree): readonly Leaf[] => {
    if (options === 0) return []
    if (options === open) return leavesOf(part, when)
    const narrowed = when.some(([id]) => id === q)
      ? when.map((w) => (w[0] === q ? ([q, options] as const) : w))
      : [...when, [q, options] as const]
    return leavesOf(part, narrowed)
  }
  return [...go(open & t.yes, t.parts[0]), ...go(open & ~t.yes, t.parts[1])]
}

const holding = (leaves: readonly Leaf[], picked: readonly number[]): readonly Leaf[] =>
  leaves.filter((l) =>
    l.when.every(
      ([id, options]) => options & picked[QUESTIONS.indexOf(id as (typeof QUESTIONS)[number])]!,
    ),
  )

describe('leaves with like numbers', () => {
  it('are put together where one question alone told them apart', () => {
    const leaf = (options: number, minutes: number): Leaf => ({
      when: [['a', options]],
      chance: 1,
      minutes: point(minutes),
      money: point(0),
    })
    expect(mergeLeaves([leaf(1, 5), leaf(2, 5), leaf(4, 7)], () => ALL)).toEqual([
      leaf(0b011, 5),
      leaf(0b100, 7),
    ])
    expect(mergeLeaves([leaf(1, 5), leaf(2, 5), leaf(4, 5)], () => ALL)).toEqual([
      { ...leaf(0, 5), when: [] },
    ])
  })

  it('say the same of every combination of options as before, each combination in one leaf', () => {
    fc.assert(
      fc.property(tree, (t) => {
        const before = leavesOf(t)
        const after = mergeLeaves(before, () => ALL)
        expect(after.length).toBeLessThanOrEqual(before.length)
        for (const a of [1, 2, 4])
          for (const b of [1, 2, 4])
            for (const c of [1, 2, 4]) {
              const [was, now] = [holding(before, [a, b, c]), holding(after, [a, b, c])]
              expect([was.length, now.length]).toEqual([1, 1])
              expect(now[0]!.chance).toBe(was[0]!.chance)
              if (was[0]!.chance > 0) expect(now[0]!.minutes).toEqual(was[0]!.minutes)
            }
      }),
      { seed: 21, numRuns: 300 },
    )
  })
})
