import type { LimitKey } from './constants'
import type { WhyCode } from './types'

/** The row of the table of limits behind each reason of a panel; one that rests on no limit is left out. */
export const whyLimits: Partial<Readonly<Record<WhyCode, LimitKey>>> = {
  'paint.why.contradicts-prior': 'gateP',
  'paint.why.reference-contradicts': 'gateP',
  'paint.why.thick': 'thickOffSills',
  'paint.why.filler-likely': 'fillerLikely',
  'paint.why.filler-sure': 'fillerSure',
  'paint.why.outlier': 'outlierScore',
  'paint.why.fresh-respray': 'freshResprayDays',
  'paint.why.thin-total-stop': 'thinStop',
  'paint.why.thin-total-hand': 'thinHand',
  'paint.why.thin-total-light': 'thinLight',
  'paint.why.small-difference': 'smallDifference',
  'paint.why.cleared-jamb-cap': 'clearedJambCap',
  'paint.why.jamb-painted-question': 'tinyDifference',
  'paint.why.edge-zone': 'edgeZoneMm',
  'paint.why.blend-edge': 'blendZoneMm',
  'paint.why.uneven': 'unevenDrop',
  'paint.why.below-floor': 'floorClear',
  'paint.why.lifetime-used': 'lifetimeCap',
  'paint.why.decision-possible': 'decisionMost',
  'paint.why.fits': 'jobCap',
}
