import type { Note } from './estimate-types'
import { noteReasons } from './reasons'
import { leastOf, type Note as Raised, risks } from './risks'

const byId = new Map(risks.map((rule) => [rule.id, rule]))

/** Raised notes as the estimate shows them: with the decision, the caution and the source of their rule. */
export const noteLines = (raised: readonly Raised[]): readonly Note[] =>
  raised.map(({ chance, ...n }) => {
    const rule = byId.get(n.id)
    const source = rule?.source ?? ''
    return {
      ...n,
      decision: rule?.decision ?? false,
      caution: rule?.caution ?? null,
      source,
      reasons: noteReasons(chance, leastOf(rule ?? n), source),
    }
  })
