import { type Answers, isUnsure } from './answers'
import type { Question } from './question'

/**
 * The only way to read an answer. Every read is recorded, with the questions that decide whether
 * the question is asked at all, so that "because" is the output of the reading, never typed by hand.
 */
export interface Reader {
  /** The value; undefined when it is not asked, left out, or (outside a world) not known. */
  value<T>(q: Question<T>): T | undefined
  /** True when the question applies and the owner has not settled it (unsure, or not answered yet). */
  unsettled(q: Question<unknown>): boolean
  /** True when the script asks it, given what is known. */
  asks(q: Question<unknown>): boolean
}

/** Index of the option an unsettled question takes; undefined leaves it unknown. */
export type Choose = (q: Question<unknown>) => number | undefined

export type Recording = Reader & { readonly because: () => readonly string[] }

/** A recording reader over `answers`; `choose` decides what unsettled questions with `likely` take. */
export const reader = (answers: Answers, choose: Choose = () => undefined): Recording => {
  const asked = new Map<string, boolean>()
  const read = new Set<string>()

  const asks = (q: Question<unknown>): boolean => {
    const known = asked.get(q.id)
    if (known !== undefined) return known
    const now = q.asked(self)
    asked.set(q.id, now)
    return now
  }
  const self: Recording = {
    value: <T>(q: Question<T>) => {
      if (!asks(q as Question<unknown>)) return undefined
      read.add(q.id)
      const a = answers[q.id]
      if (a !== undefined && !isUnsure(a)) return (a.value ?? undefined) as T | undefined
      const option = q.likely ? choose(q as Question<unknown>) : undefined
      return option === undefined ? undefined : q.likely?.[option]?.[0]
    },
    unsettled: (q) => {
      if (!asks(q)) return false
      read.add(q.id)
      const a = answers[q.id]
      return a === undefined || isUnsure(a)
    },
    asks,
    because: () => [...read].sort(),
  }
  return self
}
