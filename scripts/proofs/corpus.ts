import { answerSets } from '../../tests/corpus/answer-sets'
import { corpusFaults } from '../../tests/estimate/corpus-faults'
import type { Found } from './proof'

/** What must hold for every estimate, over every set of the corpus or every `every`-th of them. */
export const proveCorpus = (every: number): Found => {
  const sets = answerSets().filter((_, i) => i % every === 0)
  const found = Object.entries(corpusFaults).map(([name, check]) => ({ name, ...check(sets) }))
  return {
    holds: found.every(({ tried, faults }) => tried > 0 && faults.length === 0),
    figures: [
      ['answer sets', `${sets.length}`],
      ...found.flatMap(({ name, tried, faults }): [string, string][] => [
        [name, `${tried} tried, ${faults.length} faults`],
        ...faults
          .slice(0, 3)
          .map((fault): [string, string] => [`${name}, fault`, fault.slice(0, 200)]),
      ]),
    ],
  }
}
