import { jacking } from '../../intake/questions/jacking'
import { services } from '../../intake/questions/services'
import { wheels } from '../../intake/questions/wheels'
import type { RiskRule } from '../rules'
import { fires, has, is } from './read'

const PRACTICE = 'common practice, no source'

/** Wheels, jacking points and what carries the car. */
export const wheelRisks: readonly RiskRule[] = [
  {
    id: 'no-lifting',
    severity: 'stop',
    weight: 87,
    least: 0.5,
    when: (r) => fires(is(r, jacking, 'rusty')),
    caution: 'lifting',
    source: PRACTICE,
  },
  {
    id: 'wheels-off',
    severity: 'know',
    weight: 69,
    when: (r) => fires(has(r, services, 'wheels-off') && !is(r, jacking, 'rusty')),
    caution: 'wheel-nuts',
    source:
      'tyre makers: re-check after 50 km or 50-100 miles; BS AU 50-2-7a:1995 for heavier vehicles',
  },
  {
    id: 'bare-wheels',
    severity: 'know',
    weight: 31,
    when: (r) => fires(is(r, wheels, 'polished-bare', 'chrome')),
    source: PRACTICE,
  },
  {
    id: 'cracked-wheel',
    severity: 'stop',
    weight: 81,
    when: (r) => fires(is(r, wheels, 'cracked')),
    caution: 'cracked-wheel',
    source: PRACTICE,
  },
]
