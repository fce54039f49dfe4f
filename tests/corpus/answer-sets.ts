import type { Answers } from '../../src/intake/answers'
import type { Question } from '../../src/intake/question'
import { reader } from '../../src/intake/reader'
import type { Script } from '../../src/intake/replay'
import { script } from '../../src/intake/script'
import { answerWith, anyAnswer, levelsOf, shows } from './levels'
import { type Draw, draws } from './random'
import { walk } from './walk'

type Item = readonly [question: string, level: string]

/** Everything an answer set shows, question by question. */
export const itemsOf = (s: Script, answers: Answers): readonly Item[] =>
  s.questions.flatMap((q) => {
    const a = answers[q.id]
    return a === undefined ? [] : shows(q, a).map((level): Item => [q.id, level])
  })

/** Keys of every pair of levels of two different questions that an answer set shows. */
export const pairsOf = (s: Script, answers: Answers): readonly string[] => {
  const items = itemsOf(s, answers)
  return items.flatMap(([q, a], i) =>
    items.slice(i + 1).flatMap(([p, b]) => (p === q ? [] : [`${q}=${a}|${p}=${b}`])),
  )
}

/** Which pairs have been shown, by number; kept small so that the corpus is made in a second or two. */
const ledger = (s: Script) => {
  const at = new Map<string, number>()
  for (const q of s.questions) for (const level of levelsOf(q)) at.set(`${q.id}=${level}`, at.size)
  const shown = new Uint8Array(at.size * at.size)
  const number = (q: string, level: string): number => at.get(`${q}=${level}`) ?? 0
  const numbers = (answers: Answers): number[] =>
    itemsOf(s, answers).map(([q, level]) => number(q, level))
  return {
    has: (q: string, a: string, p: string, b: string): boolean =>
      shown[number(q, a) * at.size + number(p, b)] === 1,
    /** Marks an answer set; how many pairs were new (two levels of one multi count as well). */
    add: (answers: Answers): number => {
      const n = numbers(answers)
      let fresh = 0
      n.forEach((a, i) => {
        for (const b of n.slice(i + 1)) {
          const cell = a * at.size + b
          if (shown[cell] === 0) fresh += 1
          shown[cell] = 1
        }
      })
      return fresh
    },
    /** The level of `q` that goes with most pairs not shown yet beside what is answered so far. */
    neediest: (q: Question<unknown>, before: readonly number[], draw: Draw): string => {
      const levels = levelsOf(q)
      const start = draw(levels.length)
      let best = ''
      let most = -1
      levels.forEach((_, i) => {
        const level = levels[(start + i) % levels.length] ?? ''
        const column = number(q.id, level)
        const needs = before.reduce((n, a) => n + (shown[a * at.size + column] === 0 ? 1 : 0), 0)
        if (needs > most) {
          most = needs
          best = level
        }
      })
      return best
    },
    numbersOf: (q: Question<unknown>, levels: readonly string[]) =>
      levels.map((level) => number(q.id, level)),
  }
}

/** Questions whose answer decides whether another one is asked. */
const parentsOf = (s: Script, samples: readonly Answers[]): ReadonlySet<string> => {
  const parents = new Set<string>()
  for (const answers of samples)
    for (const q of s.questions) {
      const inner = reader(answers)
      const note = (id: string) => parents.add(id)
      q.asked({
        asks: inner.asks,
        value: (x) => {
          note(x.id)
          return inner.value(x)
        },
        unsettled: (x) => {
          note(x.id)
          return inner.unsettled(x)
        },
      })
    }
  return parents
}

/**
 * Walks of the script that between them show every two levels of two questions that can be asked
 * together: each missing pair is put into walks that asked both, the rest filled where most is missing.
 */
export const build = (s: Script, draw: Draw, starts: number): readonly Answers[] => {
  const seen = ledger(s)
  const kept: Answers[] = []
  const keep = (answers: Answers) => {
    if (seen.add(answers) > 0) kept.push(answers)
  }
  const pool = Array.from({ length: starts }, () => walk(s, (q) => anyAnswer(q, draw)))
  const parents = parentsOf(s, pool.slice(0, 100))
  // Questions few walks reach get more walks of their own, each changed a little from one that did.
  for (const q of s.questions) {
    const had = pool.filter((answers) => q.id in answers)
    for (let n = had.length; n > 0 && n < 150; n += 1) {
      const old = had[draw(had.length)] ?? {}
      pool.push(
        walk(s, (x) => (draw(6) > 0 ? (old[x.id] ?? anyAnswer(x, draw)) : anyAnswer(x, draw))),
      )
    }
  }
  const seedsOf = new Map<string, Answers[]>()
  for (const answers of pool) {
    const ids = s.questions.filter((q) => q.id in answers).map((q) => q.id)
    ids.forEach((q, i) => {
      for (const p of ids.slice(i + 1)) {
        const list = seedsOf.get(`${q}|${p}`)
        if (list) list.push(answers)
        else seedsOf.set(`${q}|${p}`, [answers])
      }
    })
  }
  const aim = (q: Question<unknown>, a: string, p: Question<unknown>, b: string) => {
    const seeds = seedsOf.get(`${q.id}|${p.id}`) ?? []
    for (let n = 0; n < Math.min(seeds.length, 16) && !seen.has(q.id, a, p.id, b); n += 1) {
      const seed = seeds[draw(seeds.length)] ?? {}
      const before: number[] = []
      keep(
        walk(s, (x) => {
          const level = x.id === q.id ? a : x.id === p.id ? b : undefined
          const old = parents.has(x.id) ? seed[x.id] : undefined
          const answer =
            level === undefined && old !== undefined
              ? old
              : answerWith(x, level ?? seen.neediest(x, before, draw), draw)
          before.push(...seen.numbersOf(x, shows(x, answer)))
          return answer
        }),
      )
    }
  }
  s.questions.forEach((q, i) => {
    for (const p of s.questions.slice(i + 1))
      for (const a of levelsOf(q))
        for (const b of levelsOf(p)) if (!seen.has(q.id, a, p.id, b)) aim(q, a, p, b)
  })
  for (const answers of pool) keep(answers)
  return kept
}

let made: readonly Answers[] | undefined

/** The answer sets every part of the engine is tried on; always the same, made once a run. */
export const answerSets = (): readonly Answers[] => {
  made ??= build(script, draws(20_260), 3_000)
  return made
}
