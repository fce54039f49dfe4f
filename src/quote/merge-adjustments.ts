import type { Adjustment } from './adjustment'

/** What a change is about: two changes of one key are the same thing changed twice. */
export const adjustmentKey = (a: Adjustment): string => {
  if ('step' in a) return `${a.kind}:${a.step}`
  if (a.kind === 'level') return `level:${a.panel ?? ''}`
  return a.kind === 'waive-note' ? `note:${a.note}` : a.kind
}

const byKey = (all: readonly Adjustment[]): ReadonlyMap<string, Adjustment> =>
  new Map(all.map((a) => [adjustmentKey(a), a]))

const same = (a: Adjustment | undefined, b: Adjustment | undefined): boolean =>
  JSON.stringify(a) === JSON.stringify(b)

/**
 * What two people made of the same list: everything either of them changed, added or took away. Where
 * both changed the same thing differently, `mine` stands and its key is named in `both`.
 */
export const mergeAdjustments = (
  base: readonly Adjustment[],
  theirs: readonly Adjustment[],
  mine: readonly Adjustment[],
): { readonly merged: readonly Adjustment[]; readonly both: readonly string[] } => {
  const [b, t, m] = [byKey(base), byKey(theirs), byKey(mine)]
  const merged: Adjustment[] = []
  const both: string[] = []
  for (const key of new Set([...t.keys(), ...m.keys(), ...b.keys()])) {
    const untouched = same(m.get(key), b.get(key))
    const kept = untouched ? t.get(key) : m.get(key)
    const clash = !untouched && !same(t.get(key), b.get(key)) && !same(t.get(key), m.get(key))
    if (clash) both.push(key)
    if (kept) merged.push(kept)
  }
  return { merged, both }
}
