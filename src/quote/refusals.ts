import { leakOpen } from '../intake/facts/damp'
import { finishSystem } from '../intake/facts/finish-system'
import { freshPaint } from '../intake/facts/fresh-paint'
import { mouldWay } from '../intake/facts/mould'
import { peels } from '../intake/facts/peeling'
import { vehicleKind } from '../intake/facts/vehicle-kind'
import { wants } from '../intake/facts/wants'
import { dangers } from '../intake/questions/dangers'
import { headliner } from '../intake/questions/headliner'
import { jacking } from '../intake/questions/jacking'
import { wetSource } from '../intake/questions/wet-source'
import { wheels } from '../intake/questions/wheels'
import { fires, has, is } from './risks/read'
import type { RefusalRule } from './rules'
import { CABIN_WORK, MACHINE_WORK, MOULD_WORK, unguarded } from './unguarded'

const PRACTICE = 'common practice, no source'
const OWN = 'own estimate'

const WATER = [
  'lift-carpet',
  'water-out',
  'drying-start',
  'drying-visits',
  'dry-reading',
  'carpet-refit',
] as const

/** Cleaning that an open leak would undo: it is quoted anew once the leak was found and proven shut. */
const BEHIND_THE_LEAK = [
  'carpet-extraction',
  'seats-textile',
  'odour-filter',
  'ozone',
  'odour-recheck',
] as const

/**
 * Work this studio does not do, or not yet. An empty list of steps says it in words where the
 * catalogue itself leaves the panel out or holds the steps (common practice, no source; mould and
 * sewage as in the risk notes).
 */
export const refusals: readonly RefusalRule[] = [
  {
    id: 'matte-polish',
    steps: [...MACHINE_WORK, 'polish-hand', 'glaze-hand', 'clay', 'wax', 'coating'],
    when: (r) => fires(has(r, dangers, 'matte') && wants(r, 'paint', 'protect')),
    source: PRACTICE,
  },
  {
    id: 'peeling-panels',
    steps: [],
    when: (r) => fires(peels(r) && wants(r, 'paint', 'protect')),
    source: PRACTICE,
  },
  {
    id: 'fresh-paint-protection',
    steps: ['wax', 'coating', 'high-spot-check', 'next-day-check'],
    when: (r) => fires(freshPaint(r) && wants(r, 'paint', 'protect')),
    source: PRACTICE,
  },
  {
    id: 'wet-cabin-cleaning',
    steps: BEHIND_THE_LEAK,
    when: (r) => fires(leakOpen(r)),
    source: PRACTICE,
  },
  {
    id: 'mould-beyond-limits',
    steps: [...MOULD_WORK, ...CABIN_WORK],
    when: (r) => fires(mouldWay(r) === 'specialist'),
    source:
      'EPA 402-K-01-001, ch. 3 (when to call a specialist); limits of area in a cabin own estimate',
  },
  {
    id: 'sewage-cabin',
    steps: [...CABIN_WORK, ...MOULD_WORK, ...WATER],
    when: (r) => fires(is(r, wetSource, 'sewage')),
    source: 'EPA 402-K-01-001 (water that is not clean); common practice',
  },
  {
    id: 'lacquer-machine',
    steps: [...MACHINE_WORK, 'clay'],
    when: (r) => fires(wants(r, 'paint', 'protect') && finishSystem(r) === 'lacquer'),
    source: PRACTICE,
  },
  {
    id: 'fixed-price',
    steps: [],
    when: (r) => fires(vehicleKind(r) !== 'car'),
    source: OWN,
  },
  {
    id: 'lifting-rusty',
    steps: ['wheels-off', 'calipers', 'wheels-coating', 'wheels-on', 'underside'],
    when: (r) => fires(is(r, jacking, 'rusty')),
    source: PRACTICE,
  },
  {
    id: 'cracked-wheel',
    steps: ['wheels-coating'],
    when: (r) => fires(is(r, wheels, 'cracked')),
    source: PRACTICE,
  },
  {
    id: 'loose-headliner',
    steps: ['headliner'],
    when: (r) => fires(is(r, headliner, 'loose')),
    source: OWN,
  },
  ...unguarded,
]

const byStep = new Map<string, readonly RefusalRule[]>()
for (const rule of refusals)
  for (const step of rule.steps === 'all' ? [] : rule.steps)
    byStep.set(step, [...(byStep.get(step) ?? []), rule])

const NONE: readonly RefusalRule[] = []

/** The refusals that may take this step out of scope. */
export const refusalsOf = (step: string): readonly RefusalRule[] => byStep.get(step) ?? NONE
