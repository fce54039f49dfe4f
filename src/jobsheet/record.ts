import { formatDay, parseDay } from '../kernel/calendar'
import { mean } from '../kernel/statistics'
import type { Estimate } from '../quote/estimate-types'
import type { PaintSet } from '../quote/paint'
import type { StepState } from './bench-facts'

/** Days after hand-over on which the owner is asked to look, or may do something again. */
const AFTERCARE: readonly {
  readonly id: string
  readonly days: number
  readonly steps: readonly string[]
}[] = [
  { id: 'keep-dry', days: 1, steps: ['coating', 'matte-protection', 'roof-proof'] },
  { id: 'wheel-nuts', days: 1, steps: ['wheels-off'] },
  { id: 'first-look', days: 3, steps: [] },
  { id: 'first-wash', days: 7, steps: ['coating', 'matte-protection', 'touch-up'] },
  { id: 'second-look', days: 14, steps: [] },
]

export type RecordPanel = {
  readonly panel: string
  readonly before: number | null
  readonly after: number | null
  readonly polished: readonly {
    readonly sequence: string
    readonly sets: number
    readonly machine?: string
    readonly pad?: string
    readonly abrasive?: string
    readonly speed?: string
  }[]
  /** µm that may still come off, for whoever polishes next; null: nobody knows. */
  readonly allowance: number | null
}

export type HandoverRecord = {
  readonly panels: readonly RecordPanel[]
  readonly done: readonly string[]
  readonly left: readonly {
    readonly id: string
    readonly why: 'refused-extra' | 'not-done' | 'turned-down'
  }[]
  readonly aftercare: readonly { readonly id: string; readonly date: string }[]
}

const meanOf = (
  sets: readonly PaintSet[],
  panel: string,
  when: 'before' | 'after',
): number | null => {
  const values = sets
    .filter((s) => s.panel === panel && s.kind === 'panel' && s.when === when && !s.overFilm)
    .flatMap((s) => s.values)
  return values.length === 0 ? null : Math.round(mean(values) * 10) / 10
}

/** Mean reading of each panel before and after work, µm to a tenth; what was read over film is no paint. */
export const beforeAfter = (readings: readonly PaintSet[]) =>
  [...new Set(readings.filter((r) => r.kind === 'panel').map((r) => r.panel))].map((panel) => ({
    panel,
    before: meanOf(readings, panel, 'before'),
    after: meanOf(readings, panel, 'after'),
  }))

type Ran = RecordPanel['polished'][number]

const HOW = ['machine', 'pad', 'abrasive', 'speed'] as const

/** Sets run in the same way count as one entry, in the order they were first run. */
const setsOf = (ran: readonly Ran[]): readonly Ran[] => {
  const entries: Ran[] = []
  for (const p of ran) {
    const same = entries.findIndex(
      (e) => e.sequence === p.sequence && HOW.every((key) => e[key] === p[key]),
    )
    const how = Object.fromEntries(HOW.flatMap((key) => (p[key] ? [[key, p[key]]] : [])))
    const was = entries[same]
    if (was) entries[same] = { ...was, sets: was.sets + p.sets }
    else entries.push({ sequence: p.sequence, sets: p.sets, ...how })
  }
  return entries
}

/** What is left on a panel that could be read, µm to a tenth. */
const allowanceLeft = (
  now: { readonly light: number; readonly verdict: string } | undefined,
): number | null =>
  now === undefined || now.verdict === 'cannot-be-read' ? null : Math.round(now.light * 10) / 10

/** What the owner keeps: readings before and after, what was done and left, what to do when. */
export const recordOf = (
  estimate: Pick<Estimate, 'steps' | 'scope'>,
  readings: readonly PaintSet[],
  bench: {
    readonly steps: Readonly<Record<string, { readonly state: StepState }>>
    readonly polished: readonly {
      readonly panel: string
      readonly sequence: string
      readonly sets: number
      readonly machine?: string
      readonly pad?: string
      readonly abrasive?: string
      readonly speed?: string
    }[]
  },
  handedOver: string,
  panels: readonly {
    readonly panel: string
    readonly light: number
    readonly verdict: string
  }[] = [],
): HandoverRecord => {
  const done = estimate.steps.filter((s) => bench.steps[s.id]?.state === 'done').map((s) => s.id)
  const day = parseDay(handedOver)
  if (!day.ok) throw new Error(`not a day: ${handedOver}`)
  return {
    panels: beforeAfter(readings).map((read) => ({
      ...read,
      polished: setsOf(bench.polished.filter((p) => p.panel === read.panel)),
      allowance: allowanceLeft(panels.find((p) => p.panel === read.panel)),
    })),
    done,
    left: [
      ...estimate.scope.turnedDown
        // Refused only until the leak was proven shut; once it was, the cabin was cleaned after all.
        .filter((t) => t.id !== 'wet-cabin-cleaning' || !done.includes('leak-proof'))
        .map((t) => ({ id: t.id, why: 'turned-down' as const })),
      ...estimate.steps
        .filter((s) => bench.steps[s.id]?.state !== 'done' && s.id !== 'hand-over')
        .map((s) => ({ id: s.id, why: 'not-done' as const })),
    ],
    aftercare: AFTERCARE.filter(
      (a) => a.steps.length === 0 || a.steps.some((s) => done.includes(s)),
    ).map((a) => ({ id: a.id, date: formatDay(day.value + a.days) })),
  }
}
