import type { StudioProfile } from '../../quote/studio-profile'
import type { estimateView } from './views'

type View = ReturnType<typeof estimateView>
export type Shows = StudioProfile['shows']

/** Names out of an object, and nothing else of it. */
const only = <T extends object, K extends keyof T>(of: T, ...names: readonly K[]): Pick<T, K> =>
  Object.fromEntries(names.flatMap((n) => (of[n] === undefined ? [] : [[n, of[n]]]))) as Pick<T, K>

/** What a line is and why; not how long it takes, which times the rate would be its price. */
const stepOf = (s: View['steps'][number]) =>
  only(s, 'id', 'name', 'track', 'quantity', 'because', 'cautions', 'after', 'lagMinutes', 'text')

const plainOf = (e: View) => ({
  currency: e.currency,
  scope: e.scope,
  steps: e.steps.map(stepOf),
  riskNotes: e.riskNotes,
  expectation: e.expectation,
  openPoints: e.openPoints,
  narrowing: e.narrowing.map((n) => only(n, 'question', 'text')),
  paint: e.paint,
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
