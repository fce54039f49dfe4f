/** Shapes of the paint model. Lengths in µm unless a name says otherwise; every fact may be unknown. */

export const finishSystems = [
  'clear-coat',
  'single-stage-solid',
  'single-stage-metallic',
  'lacquer',
  'matte',
  'refinished',
  'unknown',
] as const
export type FinishSystem = (typeof finishSystems)[number]

export const panelSubstrates = [
  'steel',
  'galvanised',
  'aluminium',
  'plastic',
  'composite',
  'unknown',
] as const
export type PanelSubstrate = (typeof panelSubstrates)[number]

export const probes = ['magnetic', 'eddy', 'dual', 'ultrasonic'] as const
export type Probe = (typeof probes)[number]

/**
 * One set of gauge readings in µm. With `spot` the values are repeats at that one place; without it a
 * panel's values are a quick map (one reading at each of several places). A reference is one place.
 */
export type PaintSet = {
  readonly panel: string
  readonly kind: 'panel' | 'reference'
  readonly values: readonly number[]
  readonly probe?: Probe | undefined
  readonly overFilm?: boolean | undefined
  readonly spot?: string | undefined
  readonly when?: 'before' | 'after' | undefined
}

/** The gauge as its maker states it, and what it read on shims of known thickness (µm). */
export type Gauge = {
  readonly accuracyPercent?: number | undefined
  readonly accuracyMin?: number | undefined
  readonly verification?: readonly { readonly nominal: number; readonly read: number }[] | undefined
  /** Known repeatability, 1 sd in µm; replaces the spread of the readings. */
  readonly repeatabilitySd?: number | undefined
}

export type PanelFacts = {
  readonly panel: string
  readonly substrate: PanelSubstrate
  readonly refinish: 'original' | 'resprayed' | 'unknown'
  /** Days since the respray, when known. */
  readonly refinishAge?: number | undefined
  readonly underFilm?: boolean | undefined
  readonly peel?: boolean | undefined
  readonly haze?: boolean | undefined
  readonly checking?: boolean | undefined
  readonly edgesThrough?: boolean | undefined
  readonly blendEdge?: boolean | undefined
  readonly isSill?: boolean | undefined
  readonly soft?: boolean | undefined
}

export type CarFacts = {
  readonly year: number | null
  readonly nowYear: number
  readonly finish: FinishSystem
  readonly ownersMany?: boolean | undefined
  readonly shown?: boolean | undefined
  readonly unknownHistory?: boolean | undefined
  readonly documentedRemovedUm?: number | null | undefined
  readonly fullyClearedJambKnown?: boolean | undefined
}

export const wishes = ['preserve', 'improve', 'show'] as const
export type Wish = (typeof wishes)[number]

export const defectClasses = ['haze', 'swirls', 'light', 'catches-nail', 'through'] as const
export type DefectClass = (typeof defectClasses)[number]

/** A normal quantity in µm. */
export type Spread = { readonly mean: number; readonly sd: number }

/** A reason as a key for the word tables, with the numbers its sentence needs. */
export type Why = { readonly code: WhyCode; readonly params: Readonly<Record<string, number>> }

export const whyCodes = [
  'paint.why.not-measured',
  'paint.why.no-reference',
  'paint.why.reference-not-comparable',
  'paint.why.few-readings',
  'paint.why.discordant',
  'paint.why.unreadable-substrate',
  'paint.why.wrong-probe',
  'paint.why.mixed-probes',
  'paint.why.over-film',
  'paint.why.under-film',
  'paint.why.zinc-counted',
  'paint.why.bad-value',
  'paint.why.contradicts-prior',
  'paint.why.reference-contradicts',
  'paint.why.thick',
  'paint.why.filler-likely',
  'paint.why.filler-sure',
  'paint.why.outlier',
  'paint.why.resprayed',
  'paint.why.fresh-respray',
  'paint.why.refinished-system',
  'paint.why.thin-total-stop',
  'paint.why.thin-total-hand',
  'paint.why.thin-total-light',
  'paint.why.small-difference',
  'paint.why.cleared-jamb-cap',
  'paint.why.jamb-painted-question',
  'paint.why.edges-through',
  'paint.why.edge-zone',
  'paint.why.blend-edge',
  'paint.why.peel',
  'paint.why.haze',
  'paint.why.checking',
  'paint.why.single-stage-thin',
  'paint.why.single-stage-metallic',
  'paint.why.lacquer',
  'paint.why.matte',
  'paint.why.uneven',
  'paint.why.allowance-used',
  'paint.why.below-floor',
  'paint.why.lifetime-used',
  'paint.why.decision-possible',
  'paint.why.gauge-out-of-band',
  'paint.why.fits',
] as const
export type WhyCode = (typeof whyCodes)[number]

export const why = (code: WhyCode, params: Readonly<Record<string, number>> = {}): Why => ({
  code,
  params,
})

export const verdicts = [
  'another-set',
  'finishing-only',
  'by-decision',
  'stop',
  'cannot-be-read',
  'topcoat-unknown-test-spot',
] as const
export type Verdict = (typeof verdicts)[number]

/** How far work may go on a panel, weakest first. `glaze` is non-abrasive hand work. */
export const reaches = ['none', 'glaze', 'hand', 'light', 'cut'] as const
export type Reach = (typeof reaches)[number]

export const lowerReach = (a: Reach, b: Reach): Reach =>
  reaches.indexOf(a) <= reaches.indexOf(b) ? a : b
