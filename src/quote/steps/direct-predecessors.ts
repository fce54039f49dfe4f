import type { StepRule } from '../rules'

/**
 * For steps that are in scope, the predecessors nothing else already implies: each step's `after` names
 * every one, so a plan needs only the nearest. Steps out of scope are skipped, their order is kept.
 */
export const directPredecessors = (
  inScope: readonly Pick<StepRule, 'id' | 'after'>[],
): ReadonlyMap<string, readonly string[]> => {
  const far = new Map(inScope.map((s) => [s.id, new Set(s.after)]))
  return new Map(
    inScope.map((s) => {
      const present = s.after.filter((id) => far.has(id))
      const near = present.filter((id) => !present.some((other) => far.get(other)?.has(id)))
      return [s.id, near] as const
    }),
  )
}
