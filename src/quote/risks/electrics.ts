import { belongings } from '../../intake/questions/belongings'
import { driveState } from '../../intake/questions/drive-state'
import { engineKind } from '../../intake/questions/engine-kind'
import { services } from '../../intake/questions/services'
import { warningLights } from '../../intake/questions/warning-lights'
import type { RiskRule } from '../rules'
import { fires, has, is } from './read'

const PRACTICE = 'common practice, no source'

/** Current, airbags, and a car that does not drive. */
export const electricsRisks: readonly RiskRule[] = [
  {
    id: 'high-voltage',
    severity: 'know',
    weight: 67,
    when: (r) => fires(is(r, engineKind, 'hybrid', 'electric')),
    caution: 'high-voltage',
    source: 'HSE guidance on electric and hybrid vehicles (valeting: awareness needed)',
  },
  {
    id: 'engine-wash',
    severity: 'decide',
    weight: 65,
    decision: true,
    when: (r) => fires(has(r, services, 'engine-bay')),
    caution: 'engine-wash',
    source: PRACTICE,
  },
  {
    id: 'warning-lights',
    severity: 'know',
    weight: 62,
    when: (r) => fires(has(r, warningLights, 'engine', 'brakes', 'other')),
    source: PRACTICE,
  },
  {
    id: 'airbag-light',
    severity: 'know',
    weight: 75,
    when: (r) => fires(has(r, warningLights, 'airbag', 'belt')),
    caution: 'restraints',
    source: PRACTICE,
  },
  {
    id: 'flat-battery',
    severity: 'know',
    weight: 27,
    when: (r) => fires(has(r, driveState, 'flat-battery', 'no-start')),
    caution: 'battery',
    source: PRACTICE,
  },
  {
    id: 'not-driving',
    severity: 'decide',
    weight: 85,
    decision: true,
    when: (r) => fires(has(r, driveState, 'weak-brakes', 'no-steering', 'flat-tyres')),
    caution: 'moving',
    source: PRACTICE,
  },
  {
    id: 'added-wiring',
    severity: 'know',
    weight: 26,
    when: (r) => fires(has(r, belongings, 'dash-camera', 'added-wiring', 'alarm-trouble')),
    source: PRACTICE,
  },
]
