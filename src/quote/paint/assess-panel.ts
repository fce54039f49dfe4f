import { type Allowance, allowanceOf } from './allowance'
import type { PaintSettings } from './constants'
import { gateWhys } from './gate'
import { gaugeInBand } from './gauge'
import { guardPanel } from './guards'
import { mixtureMean, mixtureQuantile, mixtureSd } from './mixture'
import { posteriorTopcoat, referenceModel } from './posterior'
import { lightlyClearedWeight, priorsFor } from './priors'
import { type Read, readSets } from './readings'
import { referenceFor } from './reference'
import { type RemovedInJob, removedBefore, removedInJob, type SetsDone } from './removed'
import { removalFactor, type SequenceId } from './sequences'
import type { Measured } from './spot'
import {
  type CarFacts,
  type Gauge,
  type PaintSet,
  type PanelFacts,
  type Reach,
  reaches,
  type Spread,
  type Verdict,
  type Why,
  why,
} from './types'
import { deepestOf, type Permit, verdictOf } from './verdict'

export type PanelAssessment = {
  readonly panel: string
  /** Topcoat now believed, µm; null when it is unknown. */
  readonly topcoat: Spread | null
  readonly light: number
  readonly strong: number
  /** By the owner's written decision, µm. */
  readonly decision: number
  readonly reach: Reach
  readonly deepest: SequenceId | null
  readonly deepestByDecision: SequenceId | null
  readonly verdict: Verdict
  readonly why: readonly Why[]
  readonly thinnest: number | null
  readonly totalMean: number | null
  readonly totalU: number | null
  readonly referenceMean: number | null
  readonly removedAssumed: number
  readonly removed: RemovedInJob
  readonly permit: Permit
}

export type PanelContext = {
  readonly car: CarFacts
  readonly panels: readonly PanelFacts[]
  readonly readings: readonly PaintSet[]
  readonly gauge: Gauge
  readonly settings: PaintSettings
  /** Panel means of the whole car, for the outlier rule. */
  readonly allTotals: readonly number[]
}

const atLeast = (reach: Reach, least: Reach): boolean =>
  reaches.indexOf(reach) >= reaches.indexOf(least)

/** The allowance as the guards leave it: nothing by machine below `light`, nothing strong below `cut`. */
const within = (a: Allowance, reach: Reach): Allowance => ({
  light: atLeast(reach, 'light') ? a.light : atLeast(reach, 'hand') ? Math.min(a.light, a.hand) : 0,
  strong: atLeast(reach, 'cut') ? a.strong : 0,
  hand: atLeast(reach, 'hand') ? a.hand : 0,
  decision: atLeast(reach, 'light') ? a.decision : 0,
})

/** A panel with one spot far below its mean is judged by that spot, less what one panel normally varies. */
const leanTotal = (read: Read, drop: number): Required<Measured> | null =>
  read.total === null || read.thinnest === null
    ? null
    : { ...read.total, mean: Math.min(read.total.mean, read.thinnest + drop) }

export const panelSets = (readings: readonly PaintSet[], panel: string): readonly PaintSet[] =>
  readings.filter((r) => r.kind === 'panel' && r.panel === panel)

/** Judges one panel: readings → topcoat → gate → guards → allowance → verdict, with every reason. */
export const assessPanel = (
  given: PanelFacts,
  done: readonly SetsDone[],
  ctx: PanelContext,
): PanelAssessment => {
  const { car, gauge, settings: s } = ctx
  const sets = panelSets(ctx.readings, given.panel)
  const before = sets.filter((r) => r.when !== 'after')
  const read = readSets(before.length > 0 ? before : sets, given.substrate, gauge)
  const after = before.length > 0 ? sets.filter((r) => r.when === 'after') : []
  const readAfter = readSets(after, given.substrate, gauge)
  const facts: PanelFacts = { ...given, underFilm: given.underFilm || read.overFilm }
  const thin = [read.thinnest, readAfter.thinnest].filter((t) => t !== null)
  const thinnest = thin.length === 0 ? null : Math.min(...thin)
  const total = leanTotal(read, s.unevenDrop)

  const references = ctx.readings.filter((r) => r.kind === 'reference' && r.when !== 'after')
  const ref =
    read.mode === null
      ? { read: null, whys: [] }
      : referenceFor(facts.panel, read.mode, references, ctx.panels, gauge)
  const reference = total === null ? null : (ref.read?.total ?? null)

  const priors = priorsFor(car.finish, car.year)
  const model = referenceModel(lightlyClearedWeight(car.year), s)
  const alone = posteriorTopcoat(priors, model, total, null)
  const both = reference === null ? alone : posteriorTopcoat(priors, model, total, reference)
  const lower = (p: number): number =>
    Math.min(mixtureQuantile(alone.topcoat, p), mixtureQuantile(both.topcoat, p))

  const gate = gateWhys(
    {
      facts,
      refinishedCar: car.finish === 'refinished',
      total: read.total?.mean ?? null,
      allTotals: ctx.allTotals,
      pTotal: alone.p,
      pBoth: both.p,
    },
    s,
  )
  const colour = alone.colourWeight >= s.colourLikely
  const guarded = guardPanel(
    {
      facts,
      finish: car.finish,
      colour,
      year: car.year,
      unknownHistory: car.unknownHistory === true || facts.refinish === 'unknown',
      thinnest,
      reference: reference?.mean ?? null,
      fullyCleared: car.fullyClearedJambKnown === true || both.clearedWeight >= s.clearedJambWeight,
    },
    s,
  )
  const plastic = facts.substrate === 'plastic' || facts.substrate === 'composite'
  const unreadable = total === null && (plastic || read.refused || facts.underFilm === true)
  const factor = removalFactor(facts.soft === true, colour, s)
  const removed = removedInJob(done, factor, read.total, readAfter.total)
  const assumed = removedBefore(car)
  const inBand = gaugeInBand(gauge)
  const raw = allowanceOf(
    {
      qLight: lower(s.lightQuantile),
      qStrong: lower(s.strongQuantile),
      floor: colour ? s.floorColour : s.floorClear,
      removedBefore: assumed,
      removedInJob: removed.um,
      guardCap: guarded.cap,
      mayCut: reference !== null && read.readings >= 3 && inBand,
      measured: total !== null,
      topcoatKnown: gate.length === 0,
      ownersRisk: gate.some((w) => w.code !== 'paint.why.reference-contradicts'),
      decisionBarred: facts.haze === true || facts.peel === true,
    },
    s,
  )
  const limited = within(raw, guarded.reach)
  const allowance = unreadable ? { ...limited, light: 0, strong: 0 } : limited
  const filmOnly =
    facts.underFilm === true &&
    guarded.whys.filter((w) => w.code !== 'paint.why.under-film').length === 0
  const permit: Permit = {
    reach: guarded.reach,
    stop: guarded.stop && !filmOnly,
    unreadable,
    topcoatKnown: gate.length === 0,
    handOnly: car.finish === 'lacquer' || facts.checking === true,
    allowance,
    factor,
    counted: removed.counted,
  }
  const deepest = deepestOf(permit, s)
  const life = s.lifetimeCap - assumed
  const notes: Why[] = []
  if (total === null && !unreadable) notes.push(why('paint.why.not-measured'))
  if (plastic && total === null) notes.push(why('paint.why.unreadable-substrate'))
  if (total !== null && reference === null) notes.push(why('paint.why.no-reference'))
  if (total !== null && read.readings < 3)
    notes.push(why('paint.why.few-readings', { n: read.readings }))
  if (!inBand) notes.push(why('paint.why.gauge-out-of-band'))
  if (total !== null && read.total !== null && total.mean < read.total.mean)
    notes.push(why('paint.why.uneven', { mean: read.total.mean, thinnest: read.thinnest ?? 0 }))
  const q = lower(s.lightQuantile)
  const floor = colour ? s.floorColour : s.floorClear
  if (q < floor) notes.push(why('paint.why.below-floor', { quantile: q, floor }))
  if (life <= 0)
    notes.push(why('paint.why.lifetime-used', { removed: assumed, cap: s.lifetimeCap }))
  if (removed.um > 0 && allowance.light === 0)
    notes.push(why('paint.why.allowance-used', { um: removed.um }))
  if (deepest.byDecision !== deepest.plain)
    notes.push(why('paint.why.decision-possible', { um: allowance.decision }))
  const verdict = verdictOf(permit, s)
  if (verdict === 'another-set')
    notes.push(why('paint.why.fits', { light: allowance.light, strong: allowance.strong }))
  const codes = new Set<string>()
  return {
    panel: facts.panel,
    topcoat:
      gate.length > 0 ? null : { mean: mixtureMean(both.topcoat), sd: mixtureSd(both.topcoat) },
    light: allowance.light,
    strong: allowance.strong,
    decision: allowance.decision,
    reach: guarded.reach,
    deepest: deepest.plain,
    deepestByDecision: deepest.byDecision,
    verdict,
    why: [...guarded.whys, ...gate, ...read.whys, ...readAfter.whys, ...ref.whys, ...notes].filter(
      (w) => {
        const fresh = !codes.has(w.code)
        codes.add(w.code)
        return fresh
      },
    ),
    thinnest,
    totalMean: read.total?.mean ?? null,
    totalU: read.total?.u ?? null,
    referenceMean: reference?.mean ?? null,
    removedAssumed: assumed,
    removed,
    permit,
  }
}
