import type { Answer, Answers } from './answers'
import { plainReader } from './plain-reader'
import type { Question } from './question'

export type Script = {
  readonly version: string
  readonly questions: readonly Question<unknown>[]
  /** Facts the rim supplies beside the answers; never asked, never set aside. */
  readonly given?: readonly Question<unknown>[]
}

export type Replayed = {
  /** Asked and answered, in the order of the script. */
  readonly answered: readonly { readonly question: Question<unknown>; readonly answer: Answer }[]
  /** The first asked question without an answer; null when nothing is left to ask. */
  readonly current: Question<unknown> | null
  /** Answers whose question is not asked as things stand; kept, and back when it is asked again. */
  readonly setAside: readonly string[]
  /** Still missing, in order: of all asked questions, and of those a submission needs. */
  readonly missing: readonly string[]
  readonly needed: readonly string[]
  readonly progress: { readonly answered: number; readonly expected: number }
}

/** A conversation never asks more than this; the last place is kept for how to reach the owner. */
export const MOST_QUESTIONS = 30

/**
 * True when a question is left out because so many were asked before it: what only narrows the range
 * goes first, with room kept for asking about two answers that do not go together.
 */
export const tooMany = (q: Question<unknown>, before: number): boolean =>
  q.stage === 'narrow' && before >= MOST_QUESTIONS - (q.check ? 1 : 2)

/** Answers to questions the script does not have, sorted; `known` of them have one. */
const strangers = (script: Script, answers: Answers, known: number): readonly string[] => {
  const ids = Object.keys(answers)
  if (ids.length === known) return []
  const all = [...script.questions, ...(script.given ?? [])]
  return ids.filter((id) => !all.some((q) => q.id === id)).sort()
}

/** Where the conversation stands: a pure function of the script and the stored answers. */
export const replay = (script: Script, answers: Answers): Replayed => {
  const r = plainReader(answers)
  const answered: { question: Question<unknown>; answer: Answer }[] = []
  const missing: string[] = []
  const needed: string[] = []
  const setAside: string[] = []
  let current: Question<unknown> | null = null
  let expected = 0
  let known = 0
  for (const q of script.questions) {
    const answer = answers[q.id]
    if (answer !== undefined) known += 1
    if (!r.asks(q)) {
      if (answer !== undefined) setAside.push(q.id)
      continue
    }
    if (answer === undefined && tooMany(q, expected)) continue
    expected += 1
    if (answer !== undefined) answered.push({ question: q, answer })
    else {
      missing.push(q.id)
      if (q.stage !== 'narrow' && !q.optional) needed.push(q.id)
      current ??= q
    }
  }
  for (const q of script.given ?? []) if (answers[q.id] !== undefined) known += 1
  setAside.push(...strangers(script, answers, known))
  return {
    answered,
    current,
    setAside,
    missing,
    needed,
    progress: { answered: answered.length, expected },
  }
}
