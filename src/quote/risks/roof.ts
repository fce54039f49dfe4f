import { roofKind } from '../../intake/questions/roof-kind'
import { roofState } from '../../intake/questions/roof-state'
import type { RiskRule } from '../rules'
import { fires, has, is } from './read'

const PRACTICE = 'common practice, no source'

/** Soft roofs: seams, plastic windows, water folded in. */
export const roofRisks: readonly RiskRule[] = [
  {
    id: 'soft-roof',
    severity: 'know',
    weight: 28,
    when: (r) =>
      fires(
        is(r, roofKind, 'cloth', 'vinyl') &&
          !has(r, roofState, 'seams', 'plastic-cloudy', 'folded-wet', 'stiff'),
      ),
    source: PRACTICE,
  },
  {
    id: 'roof-window',
    severity: 'decide',
    weight: 56,
    decision: true,
    when: (r) => fires(has(r, roofState, 'seams', 'plastic-cloudy', 'folded-wet', 'stiff')),
    source: PRACTICE,
  },
]
