import type { Answers } from '../../src/intake/answers'
import { draws } from '../corpus/random'
import { becauseFaults } from './because-faults'
import { faultsOf } from './faults-of'
import { climb, ladders } from './ladders'
import { estimateOf } from './studio'
import { likelyQuestions, mixed, unsureFaults } from './unsure-faults'

export type Tried = { readonly tried: number; readonly faults: readonly string[] }

const whole = (sets: readonly Answers[]): Tried => ({
  tried: sets.length,
  faults: sets.flatMap((answers) => faultsOf(estimateOf(answers))),
})

const because = (sets: readonly Answers[]): Tried => {
  const draw = draws(5)
  return { tried: sets.length, faults: sets.flatMap((answers) => becauseFaults(answers, draw)) }
}

/** Every question that says how likely its options are, each in at most so many of the sets. */
const unsure = (sets: readonly Answers[], most = 50) => {
  const faults: string[] = []
  const tried = new Map(likelyQuestions.map((q) => [q.id, 0]))
  for (const answers of sets)
    for (const q of mixed(answers)) {
      const before = tried.get(q.id) ?? 0
      if (before >= most) continue
      tried.set(q.id, before + 1)
      faults.push(...unsureFaults(answers, q))
    }
  return { tried: [...tried.values()].reduce((a, b) => a + b), faults, by: tried }
}

const worse = (sets: readonly Answers[]): Tried => {
  const faults: string[] = []
  let tried = 0
  for (const [question, rungs] of ladders)
    for (const answers of sets.filter((a) => question in a)) {
      const found = climb(answers, question, rungs)
      tried += found.compared
      faults.push(...found.faults)
    }
  return { tried, faults }
}

/** What must hold for every estimate, each over the answer sets it is given. */
export const corpusFaults = { whole, because, unsure, worse }
