import { highVoltage } from '../../intake/facts/high-voltage'
import { driveState } from '../../intake/questions/drive-state'
import { services } from '../../intake/questions/services'
import { warningLights } from '../../intake/questions/warning-lights'
import type { RiskRule } from '../rules'
import { fires, has } from './read'

const PRACTICE = 'common practice, no source'

/** Current, airbags, and a car that does not drive. */
export const electricsRisks: readonly RiskRule[] = [
  {
    id: 'high-voltage',
    severity: 'know',
    weight: 67,
    when: (r) => fires(highVoltage(r)),
    caution: 'high-voltage',
    source: 'HSE guidance on electric and hybrid vehicles (valeting: awareness needed)',
  },
  {
    id: 'engine-wash',
    severity: 'know',
    weight: 65,
    when: (r) => fires(has(r, services, 'engine-bay')),
    caution: 'engine-wash',
    source: PRACTICE,
  },
  {
    id: 'warning-lights',
    severity: 'know',
    weight: 75,
    least: 0.5,
    when: (r) => fires((r.value(warningLights)?.length ?? 0) > 0),
    caution: 'restraints',
    source: PRACTICE,
  },
  {
    id: 'not-driving',
    severity: 'decide',
    weight: 85,
    decision: true,
    when: (r) => fires((r.value(driveState)?.length ?? 0) > 0),
    caution: 'moving',
    source: PRACTICE,
  },
]
