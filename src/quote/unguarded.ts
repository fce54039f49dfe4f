import type { Reader } from '../intake/reader'
import { type Context, owns } from './context'
import { fires } from './risks/read'
import type { RefusalRule, StepRule } from './rules'
import { steps } from './steps'

/** Steps that protect somebody or the paint, and what is not done where one of them is not offered. */
type Guard = {
  readonly id: string
  readonly protecting: readonly string[]
  readonly steps: readonly string[]
  readonly source: string
}

const PRACTICE = 'common practice, no source'

/** Everything in a cabin that stirs, wets or closes it. */
export const CABIN_WORK = [
  'cabin-air',
  'pet-hair',
  'cabin-vacuum',
  'mats',
  'headliner',
  'plastics',
  'cabin-wipe',
  'glass-inside',
  'seats-textile',
  'leather-clean',
  'suede-brush',
  'leather-condition',
  'belts',
  'carpet-extraction',
  'odour-source',
  'odour-filter',
  'ozone',
  'odour-recheck',
] as const

export const MACHINE_WORK = ['polish-cut', 'polish-light', 'polish-finishing'] as const
export const MOULD_WORK = [
  'mould-hepa',
  'mould-wipe',
  'mould-disinfect',
  'mould-dry',
  'mould-again',
] as const

const guards: readonly Guard[] = [
  {
    id: 'mould-unguarded',
    protecting: MOULD_WORK,
    steps: [...MOULD_WORK, ...CABIN_WORK, 'carpet-refit'],
    source: 'EPA 402-K-01-001, ch. 3 (HEPA vacuum, damp wipe, drying), written for buildings',
  },
  {
    id: 'rodents-unguarded',
    protecting: ['rodent-air', 'rodent-soak', 'rodent-wipe', 'wiring-look'],
    steps: ['cabin-empty', 'lift-carpet', 'engine-bay', ...CABIN_WORK],
    source: 'CDC, cleaning up after rodents (soak, wait, wipe; never sweep or vacuum first)',
  },
  {
    id: 'damp-unproven',
    protecting: ['leak-proof', 'drying-start', 'drying-visits', 'dry-reading'],
    steps: ['lift-carpet', 'water-out', 'carpet-refit', ...MOULD_WORK, ...CABIN_WORK],
    source: 'EPA 402-K-02-003 (dry first), written for buildings',
  },
  {
    id: 'wheels-unchecked',
    protecting: ['wheels-on', 'refit-checks'],
    steps: ['wheels-off', 'wheels-clean', 'calipers', 'wheels-coating'],
    source: PRACTICE,
  },
  {
    id: 'film-untested',
    protecting: ['film-test-corner'],
    steps: ['film-top', 'film-bumper', 'adhesive'],
    source: PRACTICE,
  },
  {
    id: 'paint-untested',
    protecting: ['test-spot', 'test-spot-yes', 'tape-edges'],
    steps: [...MACHINE_WORK, 'polish-hand', 'glaze-hand', 'pads', 'cold-reading'],
    source: PRACTICE,
  },
  {
    id: 'cut-unmeasured',
    protecting: ['references', 'readings'],
    steps: ['polish-cut'],
    source: PRACTICE,
  },
]

/** True when the studio has switched a step off or lacks a piece it takes. */
export const notOffered = (rule: Pick<StepRule, 'id' | 'kit'>, c: Context): boolean =>
  c.settings.steps[rule.id]?.off === true || rule.kit.some((piece) => !owns(c, piece))

const named = (ids: readonly string[]): readonly StepRule[] =>
  steps.filter((s) => ids.includes(s.id))

/** Holds where a step that protects is needed, is not offered, and something is left to protect from. */
const missing = (g: Guard): RefusalRule['when'] => {
  const [protecting, behind] = [named(g.protecting), named(g.steps)]
  const needed = (rules: readonly StepRule[], r: Reader, c: Context) =>
    rules.some((rule) => rule.need(r, c) !== null)
  return (r, c) => {
    const gone = protecting.filter((rule) => notOffered(rule, c))
    return fires(gone.length > 0 && needed(gone, r, c) && needed(behind, r, c))
  }
}

/**
 * A step that keeps somebody or the paint from harm may be switched off, or its kit may be missing:
 * then what it protects from is not done either, and the estimate says so.
 */
export const unguarded: readonly RefusalRule[] = guards.map((g) => ({
  id: g.id,
  steps: g.steps,
  source: g.source,
  when: missing(g),
}))
