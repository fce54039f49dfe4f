import { type Allowance, allowanceOf } from './allowance'
import { type Evidence, gatherEvidence, type PanelContext } from './evidence'
import { gaugeInBand } from './gauge'
import { mixtureMean, mixtureSd } from './mixture'
import { notesOf } from './notes'
import { type RemovedInJob, removedBefore, removedInJob, type SetsDone } from './removed'
import { removalFactor, type SequenceId } from './sequences'
import { type PanelFacts, type Reach, reaches, type Spread, type Verdict, type Why } from './types'
import { deepestOf, type Permit, verdictOf } from './verdict'

export type PanelAssessment = {
  readonly panel: string
  /** Topcoat now believed, µm; null when it is unknown. */
  readonly topcoat: Spread | null
  /** µm that may come off: light work, stronger work, and by the owner's written decision. */
  readonly light: number
  readonly strong: number
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
  /** What `allowed` needs to judge a sequence on this panel, offline too. */
  readonly permit: Permit
}

const atLeast = (reach: Reach, least: Reach): boolean =>
  reaches.indexOf(reach) >= reaches.indexOf(least)

/** The allowance as the guards leave it: nothing by machine below `light`, nothing strong below `cut`. */
const withinReach = (a: Allowance, reach: Reach): Allowance => ({
  light: atLeast(reach, 'light') ? a.light : atLeast(reach, 'hand') ? Math.min(a.light, a.hand) : 0,
  strong: atLeast(reach, 'cut') ? a.strong : 0,
  hand: atLeast(reach, 'hand') ? a.hand : 0,
  decision: atLeast(reach, 'light') ? a.decision : 0,
})

const allowanceFrom = (
  e: Evidence,
  ctx: PanelContext,
  removed: RemovedInJob,
  unreadable: boolean,
): Allowance => {
  const s = ctx.settings
  const a = allowanceOf(
    {
      qLight: e.inferred.qLight,
      aboveLight: e.inferred.aboveLight,
      aboveStrong: e.inferred.aboveStrong,
      removedBefore: removedBefore(ctx.car),
      removedInJob: removed.um,
      guardCap: e.guarded.cap,
      mayCut: e.reference !== null && e.read.readings >= 3 && gaugeInBand(ctx.gauge),
      measured: e.total !== null,
      topcoatKnown: e.gate.length === 0,
      ownersRisk: e.gate.some((w) => w.code !== 'paint.why.reference-contradicts'),
      decisionBarred: e.facts.haze === true || e.facts.peel === true,
    },
    s,
  )
  const limited = withinReach(a, e.guarded.reach)
  return unreadable ? { ...limited, light: 0, strong: 0 } : limited
}

/** Judges one panel: readings → topcoat → gate → guards → allowance → verdict, with every reason. */
export const assessPanel = (
  given: PanelFacts,
  done: readonly SetsDone[],
  ctx: PanelContext,
): PanelAssessment => {
  const { settings: s, car } = ctx
  const e = gatherEvidence(given, ctx)
  const plastic = e.facts.substrate === 'plastic' || e.facts.substrate === 'composite'
  const underFilm = e.facts.underFilm === true
  const unreadable = (e.total === null && (plastic || e.read.refused)) || underFilm
  const factor = removalFactor(e.facts.soft === true, e.inferred.colourWeight, s)
  const removed = removedInJob(done, factor, e.read.total, e.after.total)
  const permit: Permit = {
    reach: e.guarded.reach,
    stop: e.guarded.stop,
    unreadable,
    topcoatKnown: e.gate.length === 0,
    handOnly: car.finish === 'lacquer' || e.facts.checking === true,
    allowance: allowanceFrom(e, ctx, removed, unreadable),
    factor,
    counted: removed.counted,
  }
  const deepest = deepestOf(permit, s)
  const verdict = verdictOf(permit, deepest)
  return {
    panel: e.facts.panel,
    topcoat: permit.topcoatKnown
      ? {
          mean: mixtureMean(e.inferred.posterior.topcoat),
          sd: mixtureSd(e.inferred.posterior.topcoat),
        }
      : null,
    light: permit.allowance.light,
    strong: permit.allowance.strong,
    decision: permit.allowance.decision,
    reach: permit.reach,
    deepest: deepest.plain,
    deepestByDecision: deepest.byDecision,
    verdict,
    why: notesOf(
      {
        evidence: e,
        allowance: permit.allowance,
        unreadable,
        plastic,
        gaugeInBand: gaugeInBand(ctx.gauge),
        removedBefore: removedBefore(car),
        removedInJob: removed.um,
        decisionHelps: deepest.byDecision !== deepest.plain,
        anotherSet: verdict === 'another-set',
      },
      s,
    ),
    thinnest: e.thinnest,
    totalMean: e.read.total?.mean ?? null,
    totalU: e.read.total?.u ?? null,
    referenceMean: e.reference?.mean ?? null,
    removedAssumed: removedBefore(car),
    removed,
    permit,
  }
}
