import { type Answer, type Answers, isUnsure } from './answers'
import { type Marks, MOST_MARKS, markAt, meet, merge, noMarks } from './marks'
import type { Question } from './question'
import type { Choose, Reader } from './reader'

/** What is known of one question in a session. */
type Known = {
  readonly id: string
  readonly own: Marks
  /** What its gate read, gates of gates included; and the same with the question itself. */
  gate: Marks
  all: Marks
  asked: boolean
  /** The run its gate was looked at in; ALWAYS when no choice touched it. */
  run: number
  answer: Answer | undefined
}
const ALWAYS = -1

/**
 * Many rules read over the same answers. Whether a question is asked is worked out once for all of
 * them, unless it hangs on an option chosen for an unsettled question: then once a run.
 */
export type Session = {
  readonly reader: Reader
  /**
   * Starts a run, one at a time: the reader records into the marks given back. With `choose` it is the
   * run of a world, in which every question with `likely` is settled; with `into` an earlier record is
   * carried on.
   */
  readonly begin: (choose?: Choose, into?: Marks) => Marks
  /** The ids of marked questions, sorted; the same list for the same marks. */
  readonly names: (marks: Marks) => readonly string[]
}

const itself = (value: unknown): unknown => value

/** A session over answers; an answer that is there does not change while it lasts. */
export const session = (answers: Answers): Session => {
  const known = new Map<string, Known>()
  const named = new Map<string, readonly string[]>()
  let marks = noMarks()
  let run = 0
  let chosen = 0
  let choose: Choose | undefined

  const added = (id: string): Known => {
    if (known.size === MOST_MARKS)
      throw new RangeError('more questions than a session has room for')
    const own = markAt(known.size)
    const k = { id, own, gate: own, all: own, asked: false, run: 0, answer: undefined }
    known.set(id, k)
    return k
  }
  const knownOf = (q: Question<unknown>): Known => {
    const k = known.get(q.id) ?? added(q.id)
    if (k.run === ALWAYS) return k
    // A gate that hangs on a choice makes what is looked at meanwhile hang on it too.
    if (k.run === run) chosen += 1
    else lookAt(q, k)
    return k
  }
  const lookAt = (q: Question<unknown>, k: Known): void => {
    const outer = marks
    const before = chosen
    marks = noMarks()
    k.asked = q.asked(self)
    k.gate = marks
    k.all = { ...marks }
    merge(k.all, k.own)
    k.run = chosen === before ? ALWAYS : run
    marks = outer
  }
  /** The answer of a question that is asked, recorded as read; null when it is not asked. */
  const read = (q: Question<unknown>): Answer | undefined | null => {
    const k = knownOf(q)
    if (!k.asked) {
      merge(marks, k.gate)
      return null
    }
    merge(marks, k.all)
    k.answer ??= answers[q.id]
    return k.answer
  }
  const as = <K>(q: Question<unknown>, seen: (value: unknown) => K): K | undefined => {
    const a = read(q)
    if (a === null) return undefined
    if (a !== undefined && !isUnsure(a)) {
      const value = a.value ?? undefined
      return value === undefined ? undefined : seen(value)
    }
    if (!q.likely?.length) return undefined
    chosen += 1
    return choose?.(q, seen)
  }
  const self: Reader = {
    value: <T>(q: Question<T>) => as(q as Question<unknown>, itself) as T | undefined,
    as: <T, K>(q: Question<T>, seen: (value: T) => K) =>
      as(q as Question<unknown>, seen as (value: unknown) => K),
    unsettled: (q) => {
      const a = read(q)
      if (a === null || (a !== undefined && !isUnsure(a))) return false
      if (!q.likely?.length) return true
      chosen += 1
      return choose === undefined
    },
    asks: (q) => {
      const k = knownOf(q)
      merge(marks, k.gate)
      return k.asked
    },
  }
  return {
    reader: self,
    begin: (given, into = noMarks()) => {
      run += 1
      choose = given
      marks = into
      return into
    },
    names: (of) => {
      const key = `${of.a},${of.b},${of.c},${of.d}`
      const found = named.get(key)
      if (found !== undefined) return found
      const ids = [...known.values()].flatMap((k) => (meet(of, k.own) ? [k.id] : [])).sort()
      named.set(key, ids)
      return ids
    },
  }
}
