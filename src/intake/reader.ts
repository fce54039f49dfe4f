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
  /**
   * What `seen` makes of the value, undefined as above. An answer nobody knows is told apart no
   * further than `seen` tells its options apart (by ===): read a value as what matters of it.
   */
  as<T, K>(q: Question<T>, seen: (value: T) => K): K | undefined
  /**
   * True when the question applies and the owner has not settled it (unsure, or not answered yet). In a
   * world a question with `likely` is settled, as if the owner had said so.
   */
  unsettled(q: Question<unknown>): boolean
  /** True when the script asks it, given what is known. */
  asks(q: Question<unknown>): boolean
}

/** What an unsettled question with `likely` is seen as in the world at hand. */
export type Choose = <K>(q: Question<unknown>, seen: (value: unknown) => K) => K

export type Recording = Reader & { readonly because: () => readonly string[] }

/** A recording reader over `answers`, to which what is not settled is not known. */
export const reader = (answers: Answers): Recording => {
  const s = session(answers)
  const marks = s.begin()
  return { ...s.reader, because: () => s.names(marks) }
}
