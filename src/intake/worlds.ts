import type { Answers } from './answers'
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
export const MOST_WORLDS = 1024
export const LEAST_DIVIDED = 1 / 256

/** A question read: its options put together as the rule told them apart, and which part is tried. */
type Step = {
  readonly q: Question<unknown>
  /** What was still open of it. */
  readonly open: Options
  readonly parts: readonly Options[]
  /** What each part is seen as. */
  readonly kinds: readonly unknown[]
  /** How likely the world is before this question divides it. */
  readonly chance: number
  /** Told apart; else the one part stands for all that is open. */
  readonly divides: boolean
  at: number
}

const chanceAfter = ({ q, open, parts, chance, divides, at }: Step): number =>
  divides ? (chance * weightOf(q, parts[at]!)) / weightOf(q, open) : chance

const worldOf = <R>(path: readonly Step[], result: R): World<R> => {
  const when: [string, Options][] = []
  for (const { q, parts, divides, at } of path) {
    if (!divides) continue
    const known = when.find(([id]) => id === q.id)
    if (known === undefined) when.push([q.id, parts[at]!])
    else known[1] = parts[at]!
  }
  const last = path.at(-1)
  return { weight: last === undefined ? 1 : chanceAfter(last), when, result }
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

const openOf = (path: readonly Step[], q: Question<unknown>): Options => {
  for (let i = path.length - 1; i >= 0; i--)
    if (path[i]!.q === q) return path[i]!.parts[path[i]!.at]!
  return allOptions(q)
}

/** The way through the options, depth first, dividing worlds from `least` on; `start` before each run. */
const explorer = (least: number) => {
  const path: Step[] = []
  let depth = 0
  const added = (q: Question<unknown>, seen: (value: unknown) => unknown): Step => {
    const last = path.at(-1)
    const chance = last === undefined ? 1 : chanceAfter(last)
    const open = openOf(path, q)
    const { parts, kinds } = partsOf(q, open, seen)
    const divides = parts.length > 1 && chance >= least
    const one = parts.length === 1 ? open : likeliestOf(q, open)
    const step = divides
      ? { q, open, parts, kinds, chance, divides, at: 0 }
      : { q, open, parts: [one], kinds: [seen(firstOf(q, one))], chance, divides, at: 0 }
    path.push(step)
    return step
  }
  // What was read so far decides what is read next, so a step of the way stands for the same reading.
  const choose: Choose = (q, seen) => {
    const step = path[depth] ?? added(q, seen)
    depth += 1
    return step.kinds[step.at] as ReturnType<typeof seen>
  }
  return {
    start: () => {
      depth = 0
    },
    choose,
    path: path as readonly Step[],
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
  const found = [worldOf(way.path, first)]
  while (way.next()) {
    if (least === 0 && found.length === MOST_WORLDS) return null
    way.start()
    s.begin(choose, marks)
    const result = rule(s.reader)
    found.push(worldOf(way.path, result))
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
