import type { Answer, Answers } from '../../src/intake/answers'
import type { Kind, Question } from '../../src/intake/question'
import { reader } from '../../src/intake/reader'
import type { Script } from '../../src/intake/replay'
import { script } from '../../src/intake/script'
import { answerWith, anyAnswer, levelsOf, shows } from './levels'
import { type Draw, draws } from './random'
import { walk } from './walk'

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
        as: (x, seen) => {
          note(x.id)
          return inner.as(x, seen)
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
 * Which two questions are tried in every pair of their levels: where one decides what else is asked,
 * and all that come before the first range. The rest meet as chance has it.
 */
const pairing = (s: Script): ((q: Question<unknown>, p: Question<unknown>) => boolean) => {
  const draw = draws(3)
  const some = Array.from({ length: 60 }, () => walk(s, (q) => anyAnswer(q, draw)))
  const parents = parentsOf(s, some)
  return (q, p) =>
    parents.has(q.id) || parents.has(p.id) || (q.stage === 'first' && p.stage === 'first')
}

/** What is only passed on as it was said: no rule asks what else was answered beside it. */
const PASSED_ON: readonly Kind[] = ['text', 'photos', 'contact', 'vin']

/** Which pairs of levels of two questions have been shown; by number, so that it is quick. */
export const pairLedger = (script: Script) => {
  const s = { questions: script.questions.filter((q) => !PASSED_ON.includes(q.kind)) }
  const at = new Map<string, number>()
  for (const q of s.questions) for (const level of levelsOf(q)) at.set(`${q.id}=${level}`, at.size)
  const names = [...at.keys()]
  const shown = new Uint8Array(at.size * at.size)
  const number = (q: string, level: string): number => at.get(`${q}=${level}`) ?? 0
  const numbersOf = (q: Question<unknown>, a: Answer): readonly number[] =>
    shows(q, a).flatMap((level) => at.get(`${q.id}=${level}`) ?? [])
  const wanted = pairing(script)
  s.questions.forEach((q, i) => {
    for (const p of s.questions.slice(i + 1))
      for (const a of wanted(q, p) ? [] : levelsOf(q))
        for (const b of levelsOf(p)) shown[number(q.id, a) * at.size + number(p.id, b)] = 1
  })
  return {
    numbersOf,
    has: (q: string, a: string, p: string, b: string): boolean =>
      shown[number(q, a) * at.size + number(p, b)] === 1,
    /** Marks what an answer set shows; the pairs nothing had shown before. */
    add: (answers: Answers): readonly string[] => {
      const fresh: string[] = []
      const before: number[] = []
      for (const q of s.questions) {
        const answer = answers[q.id]
        if (answer === undefined) continue
        const now = numbersOf(q, answer)
        for (const a of before)
          for (const b of now) {
            const cell = a * at.size + b
            if (shown[cell] === 0) fresh.push(`${names[a]}|${names[b]}`)
            shown[cell] = 1
          }
        before.push(...now)
      }
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
        let needs = 0
        for (const a of before) if (shown[a * at.size + column] === 0) needs += 1
        if (needs > most) {
          most = needs
          best = level
        }
      })
      return best
    },
  }
}

/**
 * Walks of the script that between them show every two levels of two questions that can be asked
 * together: each missing pair is put into walks that asked both, the rest filled where most is missing.
 */
export const build = (s: Script, draw: Draw, starts: number): readonly Answers[] => {
  const seen = pairLedger(s)
  const kept: Answers[] = []
  const keep = (answers: Answers) => {
    if (seen.add(answers).length > 0) kept.push(answers)
  }
  const pool = Array.from({ length: starts }, () => walk(s, (q) => anyAnswer(q, draw)))
  const parents = parentsOf(s, pool.slice(0, 100))
  // Questions few walks reach get more walks of their own, each changed a little from one that did.
  for (const q of s.questions) {
    const had = pool.filter((answers) => q.id in answers)
    for (let n = had.length; n > 0 && n < 300; n += 1) {
      const old = had[draw(had.length)] ?? {}
      pool.push(
        walk(s, (x) => (draw(6) > 0 ? (old[x.id] ?? anyAnswer(x, draw)) : anyAnswer(x, draw))),
      )
    }
  }
  const seedsOf = new Map<string, Answers[]>()
  for (const answers of pool) {
    const ids = s.questions.filter((q) => q.id in answers).map((q) => q.id)
    const note = (key: string) => {
      const list = seedsOf.get(key)
      if (list) list.push(answers)
      else seedsOf.set(key, [answers])
    }
    ids.forEach((q, i) => {
      note(q)
      for (const p of ids.slice(i + 1)) note(`${q}|${p}`)
    })
  }
  // Two questions seldom reached together: cross walks that reached one with walks that reached the other.
  s.questions.forEach((q, i) => {
    for (const p of s.questions.slice(i + 1)) {
      const seeds = seedsOf.get(`${q.id}|${p.id}`) ?? []
      const ones = seedsOf.get(q.id) ?? []
      const others = seedsOf.get(p.id) ?? []
      // Where hardly any walk reaches both, crossing seldom does either: it is tried more often.
      const tries = seeds.length < 3 ? 120 : 30
      for (let n = seeds.length; n < tries && seeds.length < 30; n += 1) {
        const a = ones[draw(ones.length)] ?? {}
        const b = others[draw(others.length)] ?? {}
        const crossed = walk(s, (x) => {
          const [first, second] = draw(2) === 0 ? [a, b] : [b, a]
          return first[x.id] ?? second[x.id] ?? anyAnswer(x, draw)
        })
        if (q.id in crossed && p.id in crossed) seeds.push(crossed)
      }
      seedsOf.set(`${q.id}|${p.id}`, seeds)
    }
  })
  const aim = (q: Question<unknown>, a: string, p: Question<unknown>, b: string) => {
    const seeds = seedsOf.get(`${q.id}|${p.id}`) ?? []
    for (let n = 0; n < Math.min(seeds.length, 40) && !seen.has(q.id, a, p.id, b); n += 1) {
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
          before.push(...seen.numbersOf(x, answer))
          return answer
        }),
      )
    }
  }
  const paired = s.questions.filter((q) => !PASSED_ON.includes(q.kind))
  paired.forEach((q, i) => {
    for (const p of paired.slice(i + 1))
      for (const a of levelsOf(q))
        for (const b of levelsOf(p)) if (!seen.has(q.id, a, p.id, b)) aim(q, a, p, b)
  })
  for (const answers of pool) keep(answers)
  // What aiming missed, chance finds: whole conversations more.
  for (let n = 0; n < 2 * starts; n += 1) keep(walk(s, (q) => anyAnswer(q, draw)))
  return kept
}

let made: readonly Answers[] | undefined

/** The answer sets every part of the engine is tried on; always the same, made once a run. */
export const answerSets = (): readonly Answers[] => {
  made ??= build(script, draws(20_261), 2_700)
  return made
}
