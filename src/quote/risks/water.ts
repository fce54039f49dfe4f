import { growth } from '../../intake/questions/growth'
import { mouldArea } from '../../intake/questions/mould-area'
import { sensitivePeople } from '../../intake/questions/sensitive-people'
import { wetDepth } from '../../intake/questions/wet-depth'
import { wetElectrics } from '../../intake/questions/wet-electrics'
import { wetSource } from '../../intake/questions/wet-source'
import { wetWhere } from '../../intake/questions/wet-where'
import type { Reader } from '../../intake/reader'
import type { RiskRule } from '../rules'
import { fires, has, is } from './read'

const MOULD = ['mould-hard', 'mould-textile', 'mould-headliner', 'mould-under-carpet'] as const

/**
 * How much mould a car may hold and still be cleaned here: hard surfaces up to a hand in-house, up
 * to a tray by the owner's decision, everything else by a specialist (own estimate; the building
 * guideline, EPA 402-K-01-001 table 2, starts its second class at 10 ft2, too much for a cabin).
 */
export const mouldLevel = (r: Reader): 'none' | 'small' | 'decide' | 'specialist' => {
  if (!has(r, growth, ...MOULD)) return 'none'
  if (has(r, growth, 'mould-headliner', 'mould-under-carpet')) return 'specialist'
  const area = r.value(mouldArea)
  if (area === 'larger' || is(r, wetSource, 'sewage')) return 'specialist'
  if (r.value(sensitivePeople) === true) return 'specialist'
  return area === 'tray' || has(r, growth, 'mould-textile') ? 'decide' : 'small'
}

/** Water that has not been shown to stay out; a flood or a sewer has its own rule. */
export const leakOpen = (r: Reader): boolean => is(r, wetSource, 'open', 'unknown')

const EPA_MOULD = 'EPA 402-K-01-001, ch. 3 (protection); cabin limits own estimate'

/** Water in the car and what grows where it stood. */
export const waterRisks: readonly RiskRule[] = [
  {
    id: 'leak-unproven',
    severity: 'stop',
    weight: 97,
    when: (r) => fires(leakOpen(r)),
    source: 'EPA 402-K-02-003 (fix the water first), written for buildings',
  },
  {
    id: 'leak-repaired',
    severity: 'know',
    weight: 60,
    when: (r) => fires(is(r, wetSource, 'repaired')),
    source: 'common practice, no source',
  },
  {
    id: 'soaked',
    severity: 'decide',
    weight: 80,
    decision: true,
    when: (r) => fires(is(r, wetDepth, 'soaked', 'standing') && !is(r, wetSource, 'sewage')),
    source: 'EPA 402-K-02-003 (dry within 24-48 hours), written for buildings',
  },
  {
    id: 'wet-electrics',
    severity: 'know',
    weight: 88,
    when: (r) =>
      fires(
        r.value(wetElectrics) === true || has(r, wetWhere, 'seats') || is(r, wetDepth, 'standing'),
      ),
    caution: 'wet-electrics',
    source: 'common practice, no source',
  },
  {
    id: 'flood',
    severity: 'decide',
    weight: 93,
    decision: true,
    when: (r) => fires(is(r, wetSource, 'flood')),
    caution: 'wet-electrics',
    source: 'own estimate',
  },
  {
    id: 'sewage',
    severity: 'stop',
    weight: 100,
    when: (r) => fires(is(r, wetSource, 'sewage')),
    caution: 'sewage',
    source: 'EPA mould cleanup methods (sewage: call a professional), written for buildings',
  },
  {
    id: 'mould-specialist',
    severity: 'stop',
    weight: 99,
    when: (r) => fires(mouldLevel(r) === 'specialist'),
    caution: 'mould',
    source: EPA_MOULD,
  },
  {
    id: 'mould-decide',
    severity: 'decide',
    weight: 95,
    decision: true,
    when: (r) => fires(mouldLevel(r) === 'decide'),
    caution: 'mould',
    source: EPA_MOULD,
  },
  {
    id: 'mould-small',
    severity: 'know',
    weight: 89,
    when: (r) => fires(mouldLevel(r) === 'small'),
    caution: 'mould',
    source: EPA_MOULD,
  },
  {
    id: 'rodents',
    severity: 'decide',
    weight: 91,
    decision: true,
    when: (r) => fires(has(r, growth, 'nest', 'droppings')),
    caution: 'rodents',
    source: 'CDC, cleaning up after rodents (soak, wait, wipe; never sweep or vacuum first)',
  },
]
