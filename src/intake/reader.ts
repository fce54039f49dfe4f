import type { Answers } from './answers'
import type { Question } from './question'
import { session } from './session'

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
export const reader = (answers: Answers, choose?: Choose): Recording => {
  const s = session(answers)
  const marks = s.begin(choose)
  return { ...s.reader, because: () => s.names(marks) }
}
