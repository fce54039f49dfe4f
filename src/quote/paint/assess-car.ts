import { assessPanel, type PanelAssessment } from './assess-panel'
import type { LimitKey, PaintSettings } from './constants'
import { type PanelContext, panelSets } from './evidence'
import { type Defect, type Expectation, expectationOf } from './expectation'
import { inferenceFor } from './infer'
import { readSets } from './readings'
import type { SetsDone } from './removed'
import { removalOf, type SequenceId, sequenceById, sequenceIds } from './sequences'
import { type ClampNote, clampSettings } from './settings'
import type { CarFacts, Gauge, PaintSet, PanelFacts, Why, Wish } from './types'

export type PaintInput = {
  readonly car: CarFacts
  readonly panels: readonly PanelFacts[]
  readonly readings?: readonly PaintSet[] | undefined
  readonly gauge?: Gauge | undefined
  readonly settings?: Partial<Readonly<Record<LimitKey, number>>> | undefined
  readonly wish?: Wish | undefined
  readonly defects?: readonly Defect[] | undefined
  /** Sets already run in this job, by panel. */
  readonly done?:
    | readonly { readonly panel: string; readonly sets: readonly SetsDone[] }[]
    | undefined
}

export type PaintAssessment = {
  readonly panels: readonly PanelAssessment[]
  /** Deepest sequence that most workable panels allow, whatever was wished; null when none is workable. */
  readonly allowedSequence: SequenceId | null
  /** Deepest that every workable panel allows. */
  readonly everywhereSequence: SequenceId | null
  /** Likewise, with the owner's written decision on the panels that allow one. */
  readonly byDecisionSequence: SequenceId | null
  /** What to plan: the allowed one, no deeper than the wish asks. */
  readonly plannedSequence: SequenceId | null
  /** Workable panels on which less than the planned sequence is allowed. */
  readonly exceptions: readonly string[]
  readonly expectation: Expectation
  readonly measuredPanels: number
  readonly flags: readonly Why[]
  readonly settings: PaintSettings
  readonly clamped: readonly ClampNote[]
}

/** The deepest sequence a wish asks for (own estimate). */
const wishMost: Readonly<Record<Wish, SequenceId>> = {
  preserve: 'gentle',
  improve: 'light-finish',
  show: 'two-step',
}

/** What holds when the studio set nothing of its own. */
const asIs = clampSettings()

const depth = (id: SequenceId | null): number => (id === null ? -1 : sequenceIds.indexOf(id))

/** Deepest sequence that at least this share of the panels allows. */
const sharedBy = (deepest: readonly (SequenceId | null)[], share: number): SequenceId | null => {
  const enough = sequenceIds.filter(
    (_, i) => deepest.filter((d) => depth(d) >= i).length >= share * deepest.length - 1e-9,
  )
  return deepest.length === 0 ? null : (enough.at(-1) ?? null)
}

/** One stand-in panel while the body is unknown, so a first range can be given. */
const anyPanel: PanelFacts = { panel: 'any', substrate: 'unknown', refinish: 'unknown' }

const withRead = (
  panels: readonly PanelFacts[],
  readings: readonly PaintSet[],
): readonly PanelFacts[] => {
  const known = new Set(panels.map((p) => p.panel))
  const extra = [...new Set(readings.filter((r) => r.kind === 'panel').map((r) => r.panel))]
  const all = [
    ...panels,
    ...extra.filter((p) => !known.has(p)).map((panel) => ({ ...anyPanel, panel })),
  ]
  return all.length === 0 ? [anyPanel] : all
}

/** Car-wide flags: each reason once, with how many panels carry it. */
const flagsOf = (panels: readonly PanelAssessment[]): readonly Why[] => {
  const counts = new Map<Why['code'], number>()
  for (const p of panels) for (const w of p.why) counts.set(w.code, (counts.get(w.code) ?? 0) + 1)
  return [...counts].map(([code, n]) => ({ code, params: { panels: n } }))
}

/**
 * The paint of a car: per panel what is there, what may come off and why; for the car what to plan and what
 * share of the marks it takes. Pure and total: without readings it speaks from the prior alone and promises
 * one light step. All lengths µm.
 */
export const assessCar = (input: PaintInput): PaintAssessment => {
  const { settings, clamped } = input.settings ? clampSettings(input.settings) : asIs
  const readings = input.readings ?? []
  const gauge = input.gauge ?? {}
  const facts = withRead(input.panels, readings)
  const allTotals = facts.flatMap((f) => {
    const sets = panelSets(readings, f.panel).filter((r) => r.when !== 'after')
    const total = f.isSill || f.underFilm ? null : readSets(sets, f.substrate, gauge).total
    return total === null ? [] : [total.mean]
  })
  const ctx: PanelContext = {
    car: input.car,
    inference: inferenceFor(input.car, settings),
    panels: facts,
    readings,
    gauge,
    settings,
    allTotals,
  }
  const doneOn = (panel: string): readonly SetsDone[] =>
    (input.done ?? []).filter((d) => d.panel === panel).flatMap((d) => d.sets)
  const panels = facts.map((f) => assessPanel(f, doneOn(f.panel), ctx))
  const workable = panels.filter((p) => p.verdict !== 'stop' && p.verdict !== 'cannot-be-read')
  const plain = workable.map((p) => p.deepest)
  const allowedSequence = sharedBy(plain, settings.mostPanels)
  const most = wishMost[input.wish ?? 'improve']
  const plannedSequence = depth(allowedSequence) > depth(most) ? most : allowedSequence
  const factor = workable.length === 0 ? 1 : Math.min(...workable.map((p) => p.permit.factor))
  const steps = plannedSequence === null ? [] : sequenceById(plannedSequence).steps
  return {
    panels,
    allowedSequence,
    byDecisionSequence: sharedBy(
      workable.map((p) => p.deepestByDecision),
      settings.mostPanels,
    ),
    everywhereSequence: sharedBy(plain, 1),
    plannedSequence,
    exceptions: workable
      .filter((p) => depth(p.deepest) < depth(plannedSequence))
      .map((p) => p.panel),
    expectation: expectationOf(removalOf(steps, factor), input.defects ?? []),
    measuredPanels: panels.filter((p) => p.totalMean !== null).length,
    flags: flagsOf(panels),
    settings,
    clamped,
  }
}
