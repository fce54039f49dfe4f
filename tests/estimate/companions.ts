import type { Estimated } from '../../src/quote/estimate'

type Companion = readonly [step: string, needs: readonly string[]]

/**
 * Steps that are never in scope alone: everything on the right is in scope too (common practice, no
 * source).
 */
const COMPANIONS: readonly Companion[] = [
  ['wash', ['check-in', 'rinse', 'dry']],
  ['film-top', ['wash', 'adhesive', 'second-wash']],
  ['film-bumper', ['wash', 'adhesive', 'second-wash']],
  ['clay', ['decontamination', 'wash', 'dry']],
  ['readings', ['references', 'dry']],
  ['polish-cut', ['readings', 'test-spot', 'test-spot-yes', 'tape-edges', 'cold-reading']],
  ['polish-light', ['wash', 'dry', 'test-spot', 'test-spot-yes', 'tape-edges', 'mask-trim']],
  ['polish-light', ['pads', 'gap-rinse', 'panel-wipe']],
  ['polish-finishing', ['test-spot', 'test-spot-yes', 'tape-edges', 'pads', 'panel-wipe']],
  ['glaze-hand', ['wash', 'dry', 'test-spot', 'test-spot-yes']],
  ['coating', ['dry', 'high-spot-check', 'next-day-check']],
  ['headlight-layer', ['headlights']],
  ['wheels-off', ['wheels-clean', 'wheels-on', 'refit-checks']],
  ['wheels-coating', ['wheels-clean', 'wheels-on']],
  ['lift-carpet', ['dry-reading', 'carpet-refit', 'refit-checks']],
  ['carpet-refit', ['lift-carpet', 'drying-start', 'drying-visits', 'dry-reading']],
  ['mould-hepa', ['mould-wipe', 'mould-dry', 'mould-again']],
  ['mould-disinfect', ['mould-hepa', 'mould-wipe', 'mould-again']],
  ['rodent-wipe', ['rodent-air', 'rodent-soak', 'wiring-look']],
  ['leak-cover', ['water-test', 'leak-proof']],
  ['roof-proof', ['wash', 'roof-clean']],
  ['roof-window', ['roof-clean']],
  ['leather-condition', ['leather-clean']],
  ['carpet-extraction', ['cabin-vacuum']],
  ['odour-recheck', ['odour-source']],
  ['glass-outside', ['wash', 'dry']],
]

/** In scope without what has to come before or after it. */
export const companionFaults = (e: Estimated): readonly string[] => {
  const scope = new Set(e.steps.map((s) => s.id))
  return [
    ...['check-in', 'look-over', 'clean-down', 'hand-over'].flatMap((id) =>
      scope.has(id) ? [] : [`no ${id}`],
    ),
    ...COMPANIONS.flatMap(([step, needs]) =>
      scope.has(step)
        ? needs.flatMap((id) => (scope.has(id) ? [] : [`${step} without ${id}`]))
        : [],
    ),
  ]
}
