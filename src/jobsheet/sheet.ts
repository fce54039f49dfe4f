import type { Estimate, EstimateStep, PanelPaint } from '../quote/estimate-types'
import { steps as catalogue } from '../quote/steps'
import type { StepState } from './bench-facts'
import { type Check, type CheckRecord, checksOf } from './checks'

export type SheetStep = EstimateStep & {
  readonly state: 'waiting' | StepState
  readonly used: number
  /** Steps before it that are not done yet; a reason to stop and think, not a lock. */
  readonly before: readonly string[]
  readonly heldBy: 'yes' | 'leak' | 'dry' | 'part' | null
}

export type Sheet = {
  readonly steps: readonly SheetStep[]
  readonly next: string | null
  readonly panels: readonly PanelPaint[]
  readonly checks: readonly Check[]
  readonly cautions: readonly string[]
  readonly materials: readonly string[]
  readonly minutes: { readonly planned: number; readonly used: number }
}

export type SheetBench = {
  readonly steps: Readonly<Record<string, { readonly state: StepState; readonly minutes: number }>>
  readonly checks: Readonly<Record<string, CheckRecord>>
}

const unique = (all: readonly string[]): readonly string[] => [...new Set(all)]

/** What has to be done before a step, however far back; own work of the studio names none. */
const predecessors = (id: string): readonly string[] =>
  catalogue.find((rule) => rule.id === id)?.after ?? []

/** An unfinished hold before a step keeps it waiting: a yes, a proof, a dry reading, a part. */
const heldBy = (
  step: EstimateStep,
  open: ReadonlyMap<string, EstimateStep>,
): SheetStep['heldBy'] => {
  for (const id of predecessors(step.id)) {
    const hold = open.get(id)?.hold
    if (hold) return hold
  }
  return null
}

/** The open steps right before this one; those further back are implied. */
const nearest = (id: string, open: ReadonlyMap<string, EstimateStep>): readonly string[] => {
  const waiting = predecessors(id).filter((each) => open.has(each))
  return waiting.filter((a) => !waiting.some((b) => predecessors(b).includes(a)))
}

/** The job sheet: the agreed estimate's steps in working order with what the bench has done. */
export const sheetOf = (
  estimate: Pick<Estimate, 'steps'>,
  panels: readonly PanelPaint[],
  bench: SheetBench,
): Sheet => {
  const isDone = (id: string): boolean => bench.steps[id]?.state === 'done'
  const open = new Map(estimate.steps.filter((s) => !isDone(s.id)).map((s) => [s.id, s]))
  const steps = estimate.steps.map((s): SheetStep => {
    const record = bench.steps[s.id]
    return {
      ...s,
      state: record?.state ?? 'waiting',
      used: record?.minutes ?? 0,
      before: nearest(s.id, open),
      heldBy: heldBy(s, open),
    }
  })
  const begun = steps.find((s) => s.state === 'begun')
  const ready = steps.find((s) => s.state !== 'done' && s.before.length === 0)
  return {
    steps,
    next: (begun ?? ready)?.id ?? null,
    panels,
    checks: checksOf(estimate.steps, bench.checks),
    cautions: unique(estimate.steps.flatMap((s) => s.cautions)),
    materials: unique(estimate.steps.flatMap((s) => s.materials)),
    minutes: {
      planned: Math.round(estimate.steps.reduce((sum, s) => sum + s.expectedMinutes, 0)),
      used: steps.reduce((sum, s) => sum + s.used, 0),
    },
  }
}
