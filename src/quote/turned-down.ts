import type { Session } from '../intake/session'
import { worldsIn } from '../intake/worlds'
import type { Context } from './context'
import type { Estimate } from './estimate-types'
import type { RefusalRule } from './rules'

/** A refusal is said from this weight of the worlds on (own estimate: early, since it protects). */
const LEAST = 0.2

/** What is refused, with its reason; what only may be refused stays an open point. */
export const turnedDownOf = (
  refusals: readonly RefusalRule[],
  s: Session,
  c: Context,
): Estimate['scope']['turnedDown'] =>
  refusals.flatMap((rule) => {
    const found = worldsIn(s, (r) => rule.when(r, c))
    const holding = found.worlds.filter((w) => w.result !== null)
    const weight = holding.reduce((sum, w) => sum + w.weight, 0)
    const first = holding[0]?.result
    if (weight < LEAST || first === null || first === undefined) return []
    return [
      {
        id: rule.id,
        steps: rule.steps === 'all' ? [] : rule.steps,
        params: first,
        because: found.because,
        source: rule.source,
      },
    ]
  })
