import { type Answers, isUnsure } from './answers'
import type { Question } from './question'
import { type Reader, reader } from './reader'

/** One state the car may be in: which option each unsettled question takes, how likely, what follows. */
export type World<R> = {
  readonly weight: number
  readonly when: readonly (readonly [questionId: string, option: number])[]
  readonly result: R
}

export type Worlds<R> = {
  readonly worlds: readonly World<R>[]
  /** Every question the rule read in any world, sorted. */
  readonly because: readonly string[]
}

/** Past this many worlds a further unsettled question takes its most likely option. */
export const MOST_WORLDS = 96

const likeliest = (q: Question<unknown>): number => {
  let best = 0
  q.likely?.forEach(([, weight], i) => {
    if (weight > (q.likely?.[best]?.[1] ?? 0)) best = i
  })
  return best
}

/**
 * Runs a rule once for every state the unsettled questions it reads may be in (depth first, in the
 * order it reads them). A rule that reads nothing unsettled runs once.
 */
export const worlds = <R>(answers: Answers, rule: (r: Reader) => R): Worlds<R> => {
  const found: World<R>[] = []
  const because = new Set<string>()
  const path: { q: Question<unknown>; option: number }[] = []
  let open = 1
  for (;;) {
    let depth = 0
    const taken = new Map<string, number>()
    const r = reader(answers, (q) => {
      const already = taken.get(q.id)
      if (already !== undefined) return already
      const step = path[depth]
      const options = q.likely?.length ?? 0
      if (options === 0) return undefined
      // A step of another question stands here when this one was past the cap the first time round.
      if (step ? step.q.id !== q.id : open + options - 1 > MOST_WORLDS) {
        const option = likeliest(q)
        taken.set(q.id, option)
        return option
      }
      if (step === undefined) {
        open += options - 1
        path.push({ q, option: 0 })
      }
      const option = path[depth]?.option ?? 0
      depth += 1
      taken.set(q.id, option)
      return option
    })
    const result = rule(r)
    for (const id of r.because()) because.add(id)
    const used = path.slice(0, depth)
    found.push({
      weight: used.reduce((w, { q, option }) => w * (q.likely?.[option]?.[1] ?? 0), 1),
      when: used.map(({ q, option }) => [q.id, option] as const),
      result,
    })
    while (path.length > 0) {
      const last = path[path.length - 1]
      if (last && last.option + 1 < (last.q.likely?.length ?? 0)) {
        last.option += 1
        break
      }
      path.pop()
    }
    if (path.length === 0) return { worlds: found, because: [...because].sort() }
  }
}

/** True when nothing but a settled answer can be read for this question. */
export const settled = (answers: Answers, id: string): boolean => {
  const a = answers[id]
  return a !== undefined && !isUnsure(a)
}
