import { POLISHING } from '../quote/adjustment'
import type { Estimate, EstimateStep, PanelPaint } from '../quote/estimate-types'
import type { StepState } from './bench-facts'
import { type Check, type CheckRecord, checksOf } from './checks'
import { NO_WORD, type PolishWord } from './polish-word'
import type { Removal } from './refit'

export type SheetStep = EstimateStep & {
  readonly state: 'waiting' | StepState
  readonly used: number
  /** Its minutes were entered afterwards, not timed. */
  readonly entered: boolean
  /** Steps before it that are not done yet; a reason to stop and think, not a lock. */
  readonly before: readonly string[]
  /** `smaller-result`: its yes is still to come; `stop`: the customer wants no more work. */
  readonly heldBy: 'yes' | 'leak' | 'dry' | 'part' | 'smaller-result' | 'stop' | null
}

export type Sheet = {
  readonly steps: readonly SheetStep[]
  readonly next: string | null
  readonly panels: readonly PanelPaint[]
  readonly checks: readonly Check[]
  readonly cautions: readonly string[]
  readonly materials: readonly string[]
  readonly minutes: { readonly planned: number; readonly used: number }
  /** Steps that are not done after all, since the customer did not want the smaller result. */
  readonly leftOut: readonly string[]
  /** Panels that are not polished for the same reason. */
  readonly leftPanels: readonly string[]
}

export type SheetBench = {
  readonly steps: Readonly<
    Record<
      string,
      { readonly state: StepState; readonly minutes: number; readonly entered?: boolean }
    >
  >
  readonly checks: Readonly<Record<string, CheckRecord>>
  readonly removals?: readonly Removal[]
}

const unique = (all: readonly string[]): readonly string[] => [...new Set(all)]

/** What has to be done before each step, however far back; own work of the studio names none. */
export type Before = Readonly<Record<string, readonly string[]>>

/** The word on a smaller result that keeps a step waiting. */
const heldByWord = (step: EstimateStep, word: PolishWord): SheetStep['heldBy'] => {
  if (word.stop && step.id !== 'hand-over') return 'stop'
  return word.waits && POLISHING.test(step.id) ? 'smaller-result' : null
}

/** An unfinished hold before a step keeps it waiting: a yes, a proof, a dry reading, a part. */
const heldBy = (
  step: EstimateStep,
  open: ReadonlyMap<string, EstimateStep>,
  before: Before,
): SheetStep['heldBy'] => {
  for (const id of before[step.id] ?? []) {
    const hold = open.get(id)?.hold
    if (hold) return hold
  }
  return null
}

/** The open steps right before this one; those further back are implied. */
const nearest = (
  id: string,
  open: ReadonlyMap<string, EstimateStep>,
  before: Before,
): readonly string[] => {
  const waiting = (before[id] ?? []).filter((each) => open.has(each))
  return waiting.filter((a) => !waiting.some((b) => before[b]?.includes(a)))
}

/** The job sheet: the agreed estimate's steps in working order with what the bench has done. */
export const sheetOf = (
  estimate: Pick<Estimate, 'steps'>,
  panels: readonly PanelPaint[],
  bench: SheetBench,
  before: Before,
  word: PolishWord = NO_WORD,
): Sheet => {
  const isDone = (id: string): boolean => bench.steps[id]?.state === 'done'
  const goes = (s: EstimateStep): boolean =>
    !isDone(s.id) &&
    POLISHING.test(s.id) &&
    (word.noPolish || (s.places.length > 0 && s.places.every((p) => word.left.includes(p))))
  const kept = estimate.steps.filter((s) => !goes(s))
  const open = new Map(kept.filter((s) => !isDone(s.id)).map((s) => [s.id, s]))
  const steps = kept.map((s): SheetStep => {
    const record = bench.steps[s.id]
    return {
      ...s,
      state: record?.state ?? 'waiting',
      used: record?.minutes ?? 0,
      entered: record?.entered ?? false,
      before: nearest(s.id, open, before),
      heldBy: isDone(s.id) ? null : (heldByWord(s, word) ?? heldBy(s, open, before)),
    }
  })
  const begun = steps.find((s) => s.state === 'begun')
  const ready = steps.find((s) => s.state !== 'done' && s.before.length === 0)
  return {
    steps,
    next: (begun ?? ready)?.id ?? null,
    panels,
    checks: checksOf(kept, bench.checks, bench.removals),
    cautions: unique(kept.flatMap((s) => s.cautions)),
    materials: unique(kept.flatMap((s) => s.materials)),
    minutes: {
      planned: Math.round(kept.reduce((sum, s) => sum + s.expectedMinutes, 0)),
      used: steps.reduce((sum, s) => sum + s.used, 0),
    },
    leftOut: estimate.steps.filter(goes).map((s) => s.id),
    leftPanels: word.left,
  }
}
