import type { StepRule } from '../rules'
import { withAncestors } from './ancestors'
import { arrival } from './arrival'
import { cabin } from './cabin'
import { damp } from './damp'
import { film } from './film'
import { glass } from './glass'
import { handOver } from './hand-over'
import { headlights } from './headlights'
import { masking } from './masking'
import { measuring } from './measuring'
import { mould } from './mould'
import { odour } from './odour'
import { polishing } from './polishing'
import { protectionSteps } from './protection'
import { roof } from './roof'
import { seatSteps } from './seats'
import { touchUp } from './touch-up'
import { underside } from './underside'
import { wash } from './wash'
import { wheels } from './wheels'

const worked: readonly StepRule[] = [
  ...arrival,
  ...mould,
  ...damp,
  ...cabin,
  ...seatSteps,
  ...odour,
  ...wash,
  ...underside,
  ...film,
  ...wheels,
  ...roof,
  ...measuring,
  ...masking,
  ...polishing,
  ...headlights,
  ...touchUp,
  ...protectionSteps,
  ...glass,
]

/** The whole catalogue in working order; `after` names every step that must precede, near or far. */
export const steps: readonly StepRule[] = withAncestors([
  ...worked,
  ...handOver(worked.map((s) => s.id)),
])
