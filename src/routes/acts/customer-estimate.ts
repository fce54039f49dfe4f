import type { Reason } from '../../quote/reason'
import type { StudioProfile } from '../../quote/studio-profile'
import type { estimateView } from './views'

type View = ReturnType<typeof estimateView>
export type Shows = StudioProfile['shows']

/** Names out of an object, and nothing else of it. */
const only = <T extends object, K extends keyof T>(of: T, ...names: readonly K[]): Pick<T, K> =>
  Object.fromEntries(names.flatMap((n) => (of[n] === undefined ? [] : [[n, of[n]]]))) as Pick<T, K>

/** Rules that speak of the paint, or of how likely something is; every other tells time or money. */
const TIMELESS: ReadonlySet<string> = new Set(['note', 'limit', 'prior'])

const timeless = (reasons: readonly Reason[] | undefined) =>
  reasons ? { reasons: reasons.filter((r) => TIMELESS.has(r.rule)) } : {}

/** What a line is and why; not how long it takes or waits: times the rate would be its price. */
const stepOf = (s: View['steps'][number]) =>
  only(s, 'id', 'name', 'track', 'quantity', 'because', 'cautions', 'after', 'text')

const noteOf = (n: View['riskNotes'][number]) => ({
  ...only(n, 'id', 'severity', 'because', 'params', 'caution', 'source'),
  ...only(n, 'text', 'means', 'decision', 'cautionText'),
  ...timeless(n.reasons),
})

const panelOf = (p: View['paint']['panels'][number]) => ({
  ...only(p, 'panel', 'topcoat', 'total', 'light', 'strong', 'deepest', 'verdict'),
  ...only(p, 'why', 'because', 'text', 'name'),
  ...timeless(p.reasons),
})

const plainOf = (e: View) => ({
  currency: e.currency,
  scope: only(e.scope, 'level', 'panels', 'turnedDown', 'lacking', 'switchedOff', 'text'),
  steps: e.steps.map(stepOf),
  riskNotes: e.riskNotes.map(noteOf),
  expectation: e.expectation,
  openPoints: e.openPoints.map((o) => only(o, 'id', 'because', 'source', 'text')),
  narrowing: e.narrowing.map((n) => only(n, 'question', 'text')),
  paint: { panels: e.paint.panels.map(panelOf) },
  basis: e.basis,
})

/**
 * The estimate as its customer may see it, by what the studio chose to show before it has looked:
 * everything, "from" one figure, or no figure at all. What is not shown on the page is not sent.
 */
export const customerEstimate = (e: View, shows: Shows) => {
  if (shows === 'range') return { ...e, shows }
  const lines = e.couldAdd.map((c) => only(c, 'id', 'kind', 'probability', 'because', 'text'))
  if (shows === 'after-review') return { ...plainOf(e), couldAdd: lines, shows }
  return {
    ...plainOf(e),
    couldAdd: e.couldAdd.map((c) =>
      only(c, 'id', 'kind', 'probability', 'price', 'because', 'text'),
    ),
    offer: only(e.offer, 'low'),
    plan: only(
      e.plan,
      'start',
      'readyLikely',
      'readyCautious',
      'readyLikelyLocal',
      'readyCautiousLocal',
    ),
    deadline: e.deadline,
    shows,
  }
}
