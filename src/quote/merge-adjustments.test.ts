import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Adjustment } from './adjustment'
import { adjustmentKey, mergeAdjustments } from './merge-adjustments'

const why = 'w'
const minutes = (step: string, n: number): Adjustment => ({
  kind: 'minutes',
  step,
  minutes: n,
  why,
})
const off = (amount: number): Adjustment => ({ kind: 'discount', amount, why })

describe('mergeAdjustments', () => {
  it('keeps what each of two people changed', () => {
    const base = [minutes('wash', 30)]
    const { merged, both } = mergeAdjustments(
      base,
      [minutes('wash', 30), off(500)],
      [minutes('wash', 45)],
    )
    expect(merged).toEqual([minutes('wash', 45), off(500)])
    expect(both).toEqual([])
  })

  it('keeps what one took away away, and names what both changed', () => {
    const base = [minutes('wash', 30), off(500)]
    const got = mergeAdjustments(base, [minutes('wash', 35), off(500)], [minutes('wash', 40)])
    expect(got).toEqual({ merged: [minutes('wash', 40)], both: ['minutes:wash'] })
  })

  it('loses nothing of either, whatever they did', () => {
    const change = fc.oneof(
      fc
        .record({ step: fc.constantFrom('a', 'b', 'c'), n: fc.nat(3) })
        .map((x) => minutes(x.step, x.n)),
      fc.nat(3).map(off),
    )
    const list = fc.uniqueArray(change, { selector: adjustmentKey, maxLength: 4 })
    fc.assert(
      fc.property(list, list, list, (base, theirs, mine) => {
        const { merged, both } = mergeAdjustments(base, theirs, mine)
        const has = (all: readonly Adjustment[], a: Adjustment) =>
          all.some((x) => JSON.stringify(x) === JSON.stringify(a))
        for (const a of mine) if (!has(base, a)) expect(has(merged, a)).toBe(true)
        for (const a of theirs)
          if (!has(base, a)) expect(has(merged, a) || both.includes(adjustmentKey(a))).toBe(true)
        expect(new Set(merged.map(adjustmentKey)).size).toBe(merged.length)
      }),
    )
    fc.assert(
      fc.property(list, list, (base, theirs) => {
        const sorted = (all: readonly Adjustment[]) => all.map((a) => JSON.stringify(a)).sort()
        expect(sorted(mergeAdjustments(base, theirs, base).merged)).toEqual(sorted(theirs))
      }),
    )
  })
})
