import { type Answers, isUnsure } from './answers'
import { allOptions, firstOf, likeliestOf, type Options, partsOf, weightOf } from './likely-options'
import { type Marks, noMarks } from './marks'
import type { Question } from './question'
import type { Choose, Reader } from './reader'
import { type Session, session } from './session'

/** One state the car may be in: what holds of each unsettled question, how likely, what follows. */
export type World<R> = {
  readonly weight: number
  /** The options of a question that lead here, each of them; as bits by their place in `likely`. */
  readonly when: readonly (readonly [questionId: string, options: Options])[]
  readonly result: R
}

export type Worlds<R> = {
  readonly worlds: readonly World<R>[]
  /** Every question the rule read in any world, sorted; and as marks of its session. */
  readonly because: readonly string[]
  readonly reads: Marks
}

/**
 * A rule with more worlds than this is run anew with fewer: a world less likely than LEAST_DIVIDED is
 * not divided further there, and what else it reads unsettled takes its likeliest option.
 */
export const MOST_WORLDS = 4096
export const LEAST_DIVIDED = 1 / 512

/** A question read, its options put together as the rule told them apart, and which of these is tried. */
type Step = {
  readonly q: Question<unknown>
  readonly parts: readonly Options[]
  /** How likely the world is before this question divides it. */
  readonly chance: number
  /** Not divided: the part stands for all of the options. */
  readonly whole: boolean
  at: number
}

const worldOf = <R>(path: readonly Step[], result: R): World<R> => {
  const holds = new Map<Question<unknown>, Options>()
  for (const { q, parts, whole, at } of path) if (!whole) holds.set(q, parts[at]!)
  let weight = 1
  const when: [string, Options][] = []
  for (const [q, options] of holds) {
    weight *= weightOf(q, options)
    when.push([q.id, options])
  }
  return { weight, when, result }
}

/** Moves on to the next part of the last step that has one; false when all have been tried. */
const advance = (path: Step[]): boolean => {
  for (;;) {
    const last = path.at(-1)
    if (last === undefined) return false
    if (last.at + 1 < last.parts.length) {
      last.at += 1
      return true
    }
    path.pop()
  }
}

/** The way through the options, depth first, dividing worlds from `least` on; `start` before each run. */
const explorer = (least: number) => {
  const path: Step[] = []
  const open = new Map<Question<unknown>, Options>()
  let depth = 0
  let chance = 1
  const choose: Choose = (q, seen) => {
    const options = open.get(q) ?? allOptions(q)
    const parts = partsOf(q, options, seen)
    if (parts.length === 1) return seen(firstOf(q, options))
    let step = path[depth]
    if (step === undefined) {
      const whole = chance < least
      step = { q, parts: whole ? [likeliestOf(q, options)] : parts, chance, whole, at: 0 }
      path.push(step)
    }
    depth += 1
    const part = step.parts[step.at]!
    if (!step.whole) chance = (step.chance * weightOf(q, part)) / weightOf(q, options)
    open.set(q, part)
    return seen(firstOf(q, part))
  }
  return {
    start: () => {
      depth = 0
      chance = 1
      open.clear()
    },
    choose,
    used: () => path.slice(0, depth),
    next: () => advance(path),
  }
}

/** All worlds of a rule, or null when they are more than MOST_WORLDS and none is left undivided. */
const explored = <R>(
  s: Session,
  rule: (r: Reader) => R,
  marks: Marks,
  least: number,
): readonly World<R>[] | null => {
  let way: ReturnType<typeof explorer> | undefined
  const choose: Choose = (q, seen) => {
    way ??= explorer(least)
    return way.choose(q, seen)
  }
  s.begin(choose, marks)
  const first = rule(s.reader)
  if (way === undefined) return [{ weight: 1, when: [], result: first }]
  const found = [worldOf(way.used(), first)]
  while (way.next()) {
    if (least === 0 && found.length === MOST_WORLDS) return null
    way.start()
    s.begin(choose, marks)
    const result = rule(s.reader)
    found.push(worldOf(way.used(), result))
  }
  return found
}

/**
 * Runs a rule once for every state the unsettled questions it reads may be in (depth first, in the
 * order it reads them), told apart no further than it reads them. A rule that reads nothing
 * unsettled runs once.
 */
export const worldsIn = <R>(s: Session, rule: (r: Reader) => R): Worlds<R> => {
  const reads = noMarks()
  const found = explored(s, rule, reads, 0) ?? explored(s, rule, reads, LEAST_DIVIDED) ?? []
  return {
    worlds: found,
    reads,
    get because() {
      return s.names(reads)
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
