import { foldInHand, type InHand } from './in-hand'
import type { BodyOf, LineKind } from './kinds'
import type { Line } from './line'

export type StepRecord = {
  readonly step: string
  readonly state: 'begun' | 'broken-off' | 'done'
  readonly minutes: number
  /** True when minutes were entered afterwards instead of running. */
  readonly entered: boolean
  readonly by: string
  readonly lastAt: number
}

export type Dated<T> = T & { readonly id: string; readonly at: number; readonly by: string }
type All<K extends LineKind> = readonly Dated<BodyOf<K>>[]

export type Bench = {
  readonly checkIn: Dated<BodyOf<'checked-in'>> | null
  readonly steps: Readonly<Record<string, StepRecord>>
  readonly readings: All<'reading'>
  readonly unreadable: Readonly<Record<string, string>>
  readonly polished: All<'polished'>
  readonly allowed: All<'allowed'>
  readonly findings: All<'found'>
  readonly removals: readonly (Dated<BodyOf<'removed'>> & { readonly refitted: boolean })[]
  readonly checks: Readonly<Record<string, Dated<BodyOf<'checked'>>>>
  readonly notes: All<'noted'>
  readonly gaugeChecks: All<'gauge-checked'>
  readonly timers: All<'timer-set'>
  readonly filmAnswers: All<'film-answered'>
  readonly crews: All<'crew-changed'>
  readonly nights: All<'stayed-overnight'>
  readonly recorded: All<'recorded'>
  /** What has to be there before the car comes, as far as a line says so. */
  readonly inHand: InHand
}

/** Lines that say the car is being worked on; a reading at a look-over does not. */
export const WORK_KINDS: readonly string[] = [
  'checked-in',
  'began',
  'broke-off',
  'done',
  'polished',
]

/** A block left running longer than this is a forgotten one; it counts as this much. */
const LONGEST_BLOCK_MINUTES = 720

const blockMinutes = (from: number, to: number): number =>
  Math.min(LONGEST_BLOCK_MINUTES, Math.max(0, Math.round((to - from) / 60_000)))

/** All lines of one kind with their stamps, in their order. */
const allOf = <K extends LineKind>(lines: readonly Line[], kind: K): All<K> =>
  lines
    .filter((line) => line.kind === kind)
    .map((line) => ({
      ...(line.body as BodyOf<K>),
      id: line.id,
      at: line.at,
      by: line.by,
    }))

type Running = StepRecord & { since?: number }

const begun = (was: Running | undefined, line: Line): Running => ({
  step: (line.body as BodyOf<'began'>).step,
  state: 'begun',
  minutes: was?.minutes ?? 0,
  entered: was?.entered ?? false,
  by: line.by,
  lastAt: line.at,
  since: line.at,
})

const stopped = (
  was: Running | undefined,
  line: Line,
  state: 'broken-off' | 'done',
): StepRecord => {
  const body = line.body as BodyOf<'done'>
  const ran = was?.since === undefined ? 0 : blockMinutes(was.since, line.at)
  const given = state === 'done' ? body.minutes : undefined
  return {
    step: body.step,
    state,
    minutes: given ?? (was?.minutes ?? 0) + ran,
    entered: given !== undefined,
    by: line.by,
    lastAt: line.at,
  }
}

const stepsOf = (lines: readonly Line[]): Bench['steps'] => {
  const steps: Record<string, Running> = {}
  for (const line of lines) {
    if (line.kind !== 'began' && line.kind !== 'broke-off' && line.kind !== 'done') continue
    const { step } = line.body as BodyOf<'began'>
    const was = steps[step]
    steps[step] =
      line.kind === 'began'
        ? begun(was, line)
        : stopped(was, line, line.kind === 'done' ? 'done' : 'broken-off')
  }
  return Object.fromEntries(
    Object.entries(steps)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([id, { since: _since, ...record }]) => [id, record]),
  )
}

/** Folds bench lines already in their fixed order. */
export const foldBench = (lines: readonly Line[]): Bench => {
  const back = new Set(allOf(lines, 'refitted').map((r) => r.removal))
  return {
    checkIn: allOf(lines, 'checked-in').at(-1) ?? null,
    steps: stepsOf(lines),
    readings: allOf(lines, 'reading'),
    unreadable: Object.fromEntries(allOf(lines, 'unreadable').map((u) => [u.panel, u.why])),
    polished: allOf(lines, 'polished'),
    allowed: allOf(lines, 'allowed'),
    findings: allOf(lines, 'found'),
    removals: allOf(lines, 'removed').map((r) => ({ ...r, refitted: back.has(r.id) })),
    checks: Object.fromEntries(allOf(lines, 'checked').map((c) => [c.check, c])),
    notes: allOf(lines, 'noted'),
    gaugeChecks: allOf(lines, 'gauge-checked'),
    timers: allOf(lines, 'timer-set'),
    filmAnswers: allOf(lines, 'film-answered'),
    crews: allOf(lines, 'crew-changed'),
    nights: allOf(lines, 'stayed-overnight'),
    recorded: allOf(lines, 'recorded'),
    inHand: foldInHand(lines),
  }
}
