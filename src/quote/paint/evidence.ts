import type { PaintSettings } from './constants'
import { believableTotal, gateWhys } from './gate'
import { type Guarded, guardPanel } from './guards'
import type { Inference, Inferred } from './infer'
import { type Read, readSets } from './readings'
import { referenceFor } from './reference'
import type { Measured } from './spot'
import type { CarFacts, Gauge, PaintSet, PanelFacts, Why } from './types'

export type PanelContext = {
  readonly car: CarFacts
  readonly panels: readonly PanelFacts[]
  readonly readings: readonly PaintSet[]
  readonly gauge: Gauge
  readonly settings: PaintSettings
  readonly inference: Inference
  /** Panel means of the whole car, for the outlier rule. */
  readonly allTotals: readonly number[]
}

/** Everything the readings and facts of one panel say, before any allowance. */
export type Evidence = {
  readonly facts: PanelFacts
  readonly read: Read
  readonly after: Read
  readonly thinnest: number | null
  /** Total the topcoat is inferred from: the mean, or the thinnest spot when the panel is uneven. */
  readonly total: Measured | null
  readonly reference: Measured | null
  readonly inferred: Inferred
  readonly gate: readonly Why[]
  readonly guarded: Guarded
  readonly referenceWhys: readonly Why[]
}

export const panelSets = (readings: readonly PaintSet[], panel: string): readonly PaintSet[] =>
  readings.filter((r) => r.kind === 'panel' && r.panel === panel)

/** A panel with one spot far below its mean is judged by that spot, plus what one panel normally varies. */
const leanTotal = (read: Read, drop: number): Measured | null =>
  read.total === null || read.thinnest === null
    ? null
    : { ...read.total, mean: Math.min(read.total.mean, read.thinnest + drop) }

const lowest = (...values: readonly (number | null)[]): number | null => {
  const known = values.filter((v) => v !== null)
  return known.length === 0 ? null : Math.min(...known)
}

/** Reads a panel's sets and its reference, infers the topcoat, and runs the gate and the guards. */
export const gatherEvidence = (given: PanelFacts, ctx: PanelContext): Evidence => {
  const { car, gauge, settings: s } = ctx
  const sets = panelSets(ctx.readings, given.panel)
  const before = sets.filter((r) => r.when !== 'after')
  const later = before.length > 0 ? sets.filter((r) => r.when === 'after') : []
  const read = readSets(before.length > 0 ? before : sets, given.substrate, gauge)
  const after = readSets(later, given.substrate, gauge)
  const facts: PanelFacts = { ...given, underFilm: given.underFilm === true || read.overFilm }
  const thinnest = lowest(read.thinnest, after.thinnest)
  const total = leanTotal(read, s.unevenDrop)

  const references = ctx.readings.filter((r) => r.kind === 'reference' && r.when !== 'after')
  const found =
    read.mode === null
      ? { read: null, whys: [] }
      : referenceFor(facts.panel, read.mode, references, ctx.panels, gauge)
  const reference = total === null ? null : (found.read?.total ?? null)

  const inferred = ctx.inference.of(total, reference)

  return {
    facts,
    read,
    after,
    thinnest,
    total,
    reference,
    inferred,
    referenceWhys: found.whys,
    gate: gateWhys(
      {
        facts,
        refinishedCar: car.finish === 'refinished',
        total: read.total?.mean ?? null,
        allTotals: ctx.allTotals,
        pTotal: inferred.pTotal,
        pBoth: inferred.posterior.p,
      },
      s,
    ),
    guarded: guardPanel(
      {
        facts,
        finish: car.finish,
        colour: inferred.colourWeight >= s.colourLikely,
        year: car.year,
        unknownHistory: car.unknownHistory === true || facts.refinish === 'unknown',
        total: read.total?.mean ?? null,
        thinnest,
        believable: believableTotal(ctx.inference.priors, s),
        reference: reference?.mean ?? null,
        fullyCleared:
          car.fullyClearedJambKnown === true ||
          inferred.posterior.clearedWeight >= s.clearedJambWeight,
      },
      s,
    ),
  }
}
