/** What the engine says to a finding of a kind. */
export type FindingKind = {
  readonly id: string
  /** Steps of the catalogue it usually leads to. */
  readonly steps: readonly string[]
  /** Minutes it usually adds (own estimate); 0: nothing to ask for by itself. */
  readonly minutes: number
  /** Not our trade: somebody qualified looks at it. */
  readonly mechanic: boolean
  /** Nothing goes on at that place before it is settled. */
  readonly stops: boolean
}

const kind = (
  id: string,
  minutes: number,
  steps: readonly string[] = [],
  more: Partial<FindingKind> = {},
): FindingKind => ({ id, minutes, steps, mechanic: false, stops: false, ...more })

/** Kinds of findings; those that the estimate counts with bear the name of its event. */
export const FINDING_KINDS: readonly FindingKind[] = [
  kind('repair-under-decal', 30, ['cold-reading']),
  kind('overspray-found', 60, ['clay']),
  kind('extra-pass', 60, ['polish-light']),
  kind('film-lifts-paint', 60, ['film-top'], { stops: true }),
  kind('adhesive-fights', 60, ['adhesive']),
  kind('foam-replaced', 90, ['lift-carpet', 'carpet-refit'], { stops: true }),
  kind('hidden-damp', 60, ['lift-carpet', 'drying-start', 'dry-reading'], { stops: true }),
  kind('hidden-mould', 90, ['mould-hepa', 'mould-wipe', 'mould-disinfect'], { stops: true }),
  kind('wet-electrics', 0, [], { mechanic: true, stops: true }),
  kind('chewed-wiring', 0, [], { mechanic: true, stops: true }),
  kind('seized-fastener', 30),
  kind('broken-clip', 20),
  kind('badge-pin', 20),
  kind('locking-key-missing', 60, [], { stops: true }),
  kind('rusty-jacking-point', 0, [], { mechanic: true, stops: true }),
  kind('leather-colour', 0, [], { stops: true }),
  kind('torn-seam', 0),
  kind('mechanical', 0, [], { mechanic: true }),
]

export type Suggestion = FindingKind & {
  /** The estimate reckoned with it. */
  readonly known: boolean
}

/**
 * What to suggest for a finding: the estimate's own minutes where it reckoned with it, else the table's.
 * An unknown kind suggests nothing.
 */
export const suggestionFor = (
  id: string | undefined,
  couldAdd: readonly { readonly id: string; readonly minutes: number }[],
): Suggestion | null => {
  const found = FINDING_KINDS.find((k) => k.id === id)
  if (!found) return null
  const own = couldAdd.find((c) => c.id === id)
  return { ...found, minutes: own ? Math.round(own.minutes) : found.minutes, known: !!own }
}
