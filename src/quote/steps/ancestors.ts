import type { StepRule } from '../rules'

/**
 * The same steps in working order, each naming every step that must precede it, directly or not: when
 * one in between is out of scope the rule "first this, then that" still holds. Throws on an unknown id.
 */
export const withAncestors = (steps: readonly StepRule[]): readonly StepRule[] => {
  const byId = new Map(steps.map((s) => [s.id, s]))
  const known = new Map<string, ReadonlySet<string>>()
  const ancestors = (id: string, path: readonly string[]): ReadonlySet<string> => {
    const found = known.get(id)
    if (found) return found
    const s = byId.get(id)
    if (!s) throw new Error(`No step ${id}`)
    if (path.includes(id)) throw new Error(`Steps in a circle: ${[...path, id].join(' → ')}`)
    const all = new Set<string>()
    for (const a of s.after) {
      all.add(a)
      for (const further of ancestors(a, [...path, id])) all.add(further)
    }
    known.set(id, all)
    return all
  }
  const ordered = [...steps].sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1))
  return ordered.map((s) => {
    const all = ancestors(s.id, [])
    return { ...s, after: ordered.filter((o) => all.has(o.id)).map((o) => o.id) }
  })
}
