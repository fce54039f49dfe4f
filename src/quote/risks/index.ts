import type { RiskRule } from '../rules'
import { agreementRisks } from './agreement'
import { cabinRisks } from './cabin'
import { electricsRisks } from './electrics'
import { filmRisks } from './film'
import { paintRisks } from './paint'
import { polishRisks } from './polish'
import { roofRisks } from './roof'
import { waterRisks } from './water'
import { wheelRisks } from './wheels'

/** Every risk note the project can raise. */
export const risks: readonly RiskRule[] = [
  ...paintRisks,
  ...polishRisks,
  ...filmRisks,
  ...waterRisks,
  ...cabinRisks,
  ...wheelRisks,
  ...roofRisks,
  ...electricsRisks,
  ...agreementRisks,
]

export { leastOf, type Note, pickNotes, raisedNotes } from './pick-notes'
