/** One number a studio may change, the hard limits it can never leave, and where it comes from. */
export type Limit = {
  readonly value: number
  readonly hardMin: number
  readonly hardMax: number
  readonly source: string
}

const own = 'own estimate'
const practice = 'common practice, no source'
const limit = (value: number, hardMin: number, hardMax: number, source: string): Limit => ({
  value,
  hardMin,
  hardMax,
  source,
})

/**
 * Every threshold of the paint model, µm unless the name says otherwise. Hard limits only ever let a
 * studio be stricter than the trade or the car makers' bulletins, never laxer.
 */
export const limits = {
  jobCap: limit(5, 0, 7.62, own),
  lifetimeCap: limit(
    7.62,
    0,
    12.7,
    'default 0.3 mil (trade, second hand); hard stop 0.5 mil, Chevrolet bulletin 91-282-10',
  ),
  floorClear: limit(35.56, 35.56, 80, '1.4 mil of clear must remain, Buick bulletin 86-10-24'),
  floorColour: limit(45, 45, 80, own),
  lightStepMost: limit(2.5, 0, 2.5, own),
  lightQuantile: limit(0.2, 0.001, 0.2, own),
  strongQuantile: limit(0.05, 0.001, 0.05, own),
  decisionMost: limit(2, 0, 2, own),
  decisionFloor: limit(30, 30, 80, own),
  unknownDecisionMost: limit(5, 0, 5, own),
  handMost: limit(
    1,
    0,
    1,
    'hand finishing is below what a gauge sees: 0.5 µm or less a set, doubled on soft paint',
  ),
  colourLikely: limit(0.2, 0, 0.2, own),
  mostPanels: limit(0.6, 0.5, 1, own),
  fillerLikely: limit(500, 300, 500, practice),
  fillerSure: limit(1000, 500, 1000, practice),
  gateP: limit(0.01, 0.01, 0.5, own),
  thickOffSills: limit(180, 120, 180, practice),
  outlierScore: limit(3.5, 2, 3.5, 'modified z-score 3.5, NIST/SEMATECH e-Handbook 1.3.5.17'),
  outlierLeast: limit(25, 5, 25, own),
  thinStop: limit(70, 70, 150, practice),
  thinHand: limit(80, 80, 150, practice),
  thinLight: limit(100, 100, 150, practice),
  singleStageMachine: limit(90, 90, 150, practice),
  smallDifference: limit(25, 25, 60, practice),
  smallDifferenceTotal: limit(105, 105, 150, practice),
  clearedJambTotal: limit(110, 110, 150, practice),
  clearedJambCap: limit(4, 0, 4, own),
  clearedJambWeight: limit(0.8, 0.8, 1, own),
  tinyDifference: limit(10, 10, 40, practice),
  edgeZoneMm: limit(25, 15, 100, 'edges 15-25 mm, common practice'),
  blendZoneMm: limit(150, 150, 500, practice),
  freshResprayDays: limit(90, 90, 365, 'paint makers ask up to 90 days, trade page'),
  unevenDrop: limit(12, 5, 15, 'about half a mil inside one panel is normal, common practice'),
  recentYear: limit(2000, 2000, 2030, practice),
  referenceLightMean: limit(16, 0, 40, own),
  referenceLightSd: limit(16, 8, 40, own),
  referenceClearMean: limit(45, 25, 70, own),
  referenceClearSd: limit(8, 4, 30, own),
  softFactor: limit(1.5, 1.5, 3, 'soft and single-stage paint gives 1.5-2 times, common practice'),
  singleStageFactor: limit(
    1.5,
    1.5,
    3,
    'soft and single-stage paint gives 1.5-2 times, common practice',
  ),
  softSingleStageFactor: limit(2, 2, 4, own),
} as const satisfies Readonly<Record<string, Limit>>

export type LimitKey = keyof typeof limits
export type PaintSettings = { readonly [K in LimitKey]: number }

/** Gauge figures: accuracy as most digital gauges state it, and a spread for a lone reading (1 sd). */
export const gaugeDefaults = {
  accuracyPercent: 3,
  accuracyMin: 1,
  loneReadingSd: 2,
  source: own,
} as const

/** Zinc under the paint that a magnetic probe counts as paint, µm (common practice, no source). */
export const zincUm = { low: 7, high: 10 } as const

/** Already removed when nobody documented it: µm by age, straight lines between (own estimate). */
export const removedByAge = [
  { years: 0, um: 1 },
  { years: 5, um: 3 },
  { years: 15, um: 5 },
] as const

/** The largest figure ever assumed, for several owners, a shown car or an unknown past. */
export const removedMost = 5
