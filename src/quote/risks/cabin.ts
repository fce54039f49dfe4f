import { belongings } from '../../intake/questions/belongings'
import { cabinMarks } from '../../intake/questions/cabin-marks'
import { cabinState } from '../../intake/questions/cabin-state'
import { dangers } from '../../intake/questions/dangers'
import { headliner } from '../../intake/questions/headliner'
import { leather } from '../../intake/questions/leather'
import { sensitivePeople } from '../../intake/questions/sensitive-people'
import type { RiskRule } from '../rules'
import { fires, has, is } from './read'

const PRACTICE = 'common practice, no source'

/** The cabin: what stays, what may break, what a nose decides. */
export const cabinRisks: readonly RiskRule[] = [
  {
    id: 'fade-only',
    severity: 'know',
    weight: 61,
    when: (r) => fires(has(r, cabinMarks, 'smoke', 'milk', 'stains')),
    caution: 'ozone',
    source: PRACTICE,
  },
  {
    id: 'body-fluids',
    severity: 'know',
    weight: 79,
    when: (r) => fires(has(r, cabinMarks, 'urine', 'vomit')),
    caution: 'body-fluids',
    source: PRACTICE,
  },
  {
    id: 'gentle-air',
    severity: 'know',
    weight: 62,
    least: 0.5,
    when: (r) =>
      fires(
        r.value(sensitivePeople) === true && has(r, cabinMarks, 'smoke', 'milk', 'urine', 'vomit'),
      ),
    source: PRACTICE,
  },
  {
    id: 'pet-hair',
    severity: 'know',
    weight: 35,
    when: (r) => fires(has(r, cabinMarks, 'pet-hair')),
    source: PRACTICE,
  },
  {
    id: 'salt',
    severity: 'know',
    weight: 34,
    when: (r) => fires(has(r, cabinMarks, 'salt')),
    source: PRACTICE,
  },
  {
    id: 'neglected-cabin',
    severity: 'decide',
    weight: 57,
    decision: true,
    when: (r) => fires(is(r, cabinState, 'neglected') && !has(r, dangers, 'wet', 'growth')),
    source: PRACTICE,
  },
  {
    id: 'leather',
    severity: 'know',
    weight: 51,
    when: (r) => fires(has(r, leather, 'suede', 'cracked', 'dyed')),
    source: PRACTICE,
  },
  {
    id: 'headliner',
    severity: 'decide',
    weight: 59,
    decision: true,
    when: (r) => fires(is(r, headliner, 'loose')),
    source: PRACTICE,
  },
  {
    id: 'child-seats',
    severity: 'know',
    weight: 47,
    when: (r) => fires(has(r, belongings, 'child-seats')),
    caution: 'restraints',
    source: PRACTICE,
  },
]
