import type { Answer, Answers } from '../../intake/answers'
import type { Question } from '../../intake/question'
import { replay, type Script } from '../../intake/replay'

/** A small repeatable source of numbers in [0, 1), for tests (multiply-with-carry, 32 bits). */
export const numbers = (seed: number): (() => number) => {
  let a = (seed ^ 0x9e3779b9) >>> 0
  return () => {
    a = (a + 0x6d2b79f5) >>> 0
    let t = Math.imul(a ^ (a >>> 15), a | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

const pick = <T>(list: readonly T[], next: () => number): T =>
  list[Math.floor(next() * list.length)] as T

const value = (q: Question<unknown>, next: () => number): unknown => {
  const options = q.options ?? []
  switch (q.kind) {
    case 'choice':
      return pick(options, next)
    case 'multi': {
      const wanted = Math.floor(next() * 3) + (q.id === 'services' ? 1 : 0)
      const chosen = new Set<string>()
      for (let i = 0; i < wanted; i += 1) chosen.add(pick(options, next))
      const alone = q.alone?.find((o) => chosen.has(o))
      return alone === undefined ? options.filter((o) => chosen.has(o)) : [alone]
    }
    case 'yesNo':
      return next() < 0.5
    case 'number':
      return (q.min ?? 0) + Math.floor(next() * ((q.max ?? 100) - (q.min ?? 0)))
    case 'year':
      return 1955 + Math.floor(next() * 72)
    case 'date':
      return '2026-06-12'
    case 'money':
      return 25_000 + Math.floor(next() * 100_000)
    case 'photos':
      return []
    default:
      return 'x'
  }
}

/** One owner's answers, asked in the order of the script; some are not known, some left out. */
export const randomAnswers = (script: Script, seed: number): Answers => {
  const next = numbers(seed)
  let answers: Readonly<Record<string, Answer>> = {}
  for (;;) {
    const q = replay(script, answers).current
    if (q === null) return answers
    const unsure = q.unsureAllowed && next() < 0.1
    const skipped = q.optional && next() < 0.6
    const answer: Answer = unsure ? { unsure: true } : { value: skipped ? null : value(q, next) }
    answers = { ...answers, [q.id]: answer }
  }
}
