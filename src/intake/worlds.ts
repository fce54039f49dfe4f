import { type Answers, isUnsure } from './answers'
import type { Marks } from './marks'
import type { Question } from './question'
import type { Choose, Reader } from './reader'
import { type Session, session } from './session'

/** One state the car may be in: which option each unsettled question takes, how likely, what follows. */
export type World<R> = {
  readonly weight: number
  readonly when: readonly (readonly [questionId: string, option: number])[]
  readonly result: R
}

export type Worlds<R> = {
  readonly worlds: readonly World<R>[]
  /** Every question the rule read in any world, sorted; and as marks of its session. */
  readonly because: readonly string[]
  readonly reads: Marks
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

type Step = { readonly q: Question<unknown>; option: number }

const worldOf = <R>(path: readonly Step[], result: R): World<R> => ({
  weight: path.reduce((w, { q, option }) => w * (q.likely?.[option]?.[1] ?? 0), 1),
  when: path.map(({ q, option }) => [q.id, option] as const),
  result,
})

/** Moves on to the next option of the last step that has one; false when all have been tried. */
const advance = (path: Step[]): boolean => {
  for (;;) {
    const last = path.at(-1)
    if (last === undefined) return false
    if (last.option + 1 < (last.q.likely?.length ?? 0)) {
      last.option += 1
      return true
    }
    path.pop()
  }
}

/** The way through the options, depth first; `start` before each run. */
const explorer = () => {
  const path: Step[] = []
  const taken = new Map<string, number>()
  let open = 1
  let depth = 0
  const pick = (q: Question<unknown>): number => {
    const options = q.likely?.length ?? 0
    const step = path[depth]
    // A step of another question stands here when this one was past the cap the first time round.
    if (step ? step.q.id !== q.id : open + options - 1 > MOST_WORLDS) return likeliest(q)
    depth += 1
    if (step !== undefined) return step.option
    open += options - 1
    path.push({ q, option: 0 })
    return 0
  }
  return {
    start: () => {
      depth = 0
      taken.clear()
    },
    choose: (q: Question<unknown>): number | undefined => {
      const already = taken.get(q.id)
      if (already !== undefined || !q.likely?.length) return already
      const option = pick(q)
      taken.set(q.id, option)
      return option
    },
    used: () => path.slice(0, depth),
    next: () => advance(path),
  }
}

/**
 * Runs a rule once for every state the unsettled questions it reads may be in (depth first, in the
 * order it reads them). A rule that reads nothing unsettled runs once.
 */
export const worldsIn = <R>(s: Session, rule: (r: Reader) => R): Worlds<R> => {
  let way: ReturnType<typeof explorer> | undefined
  const choose: Choose = (q) => {
    way ??= explorer()
    return way.choose(q)
  }
  const marks = s.begin(choose)
  const found = [worldOf([], rule(s.reader))]
  if (way !== undefined) {
    found[0] = worldOf(way.used(), found[0]!.result)
    while (way.next()) {
      way.start()
      s.begin(choose, marks)
      const result = rule(s.reader)
      found.push(worldOf(way.used(), result))
    }
  }
  return {
    worlds: found,
    reads: marks,
    get because() {
      return s.names(marks)
    },
  }
}

/** The worlds of one rule by itself. */
export const worlds = <R>(answers: Answers, rule: (r: Reader) => R): Worlds<R> =>
  worldsIn(session(answers), rule)

/** True when nothing but a settled answer can be read for this question. */
export const settled = (answers: Answers, id: string): boolean => {
  const a = answers[id]
  return a !== undefined && !isUnsure(a)
}
