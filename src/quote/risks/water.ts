import { leakOpen } from '../../intake/facts/damp'
import { hasRodents, mouldWay } from '../../intake/facts/mould'
import { wetDepth } from '../../intake/questions/wet-depth'
import { wetElectrics } from '../../intake/questions/wet-electrics'
import { wetSource } from '../../intake/questions/wet-source'
import { wetWhere } from '../../intake/questions/wet-where'
import type { RiskRule } from '../rules'
import { fires, has, is } from './read'

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
    when: (r) => fires(is(r, wetSource, 'repaired') && !leakOpen(r)),
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
    when: (r) => fires(mouldWay(r) === 'specialist'),
    caution: 'mould',
    source: EPA_MOULD,
  },
  {
    id: 'mould-decide',
    severity: 'decide',
    weight: 95,
    decision: true,
    when: (r) => fires(mouldWay(r) === 'decision'),
    caution: 'mould',
    source: EPA_MOULD,
  },
  {
    id: 'mould-small',
    severity: 'know',
    weight: 89,
    when: (r) => fires(mouldWay(r) === 'in-house'),
    caution: 'mould',
    source: EPA_MOULD,
  },
  {
    id: 'rodents',
    severity: 'decide',
    weight: 91,
    decision: true,
    when: (r) => fires(hasRodents(r)),
    caution: 'rodents',
    source: 'CDC, cleaning up after rodents (soak, wait, wipe; never sweep or vacuum first)',
  },
]
