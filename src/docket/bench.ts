import { foldInHand, type InHand } from './in-hand'
import type { BodyOf } from './kinds'
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

type Dated<T> = T & { readonly id: string; readonly at: number; readonly by: string }

export type Bench = {
  readonly checkIn: Dated<BodyOf<'checked-in'>> | null
  readonly steps: Readonly<Record<string, StepRecord>>
  readonly readings: readonly Dated<BodyOf<'reading'>>[]
  readonly unreadable: Readonly<Record<string, string>>
  readonly polished: readonly Dated<BodyOf<'polished'>>[]
  readonly allowed: readonly Dated<BodyOf<'allowed'>>[]
  readonly findings: readonly Dated<BodyOf<'found'>>[]
  readonly removals: readonly (Dated<BodyOf<'removed'>> & { readonly refitted: boolean })[]
  readonly checks: Readonly<Record<string, Dated<BodyOf<'checked'>>>>
  readonly notes: readonly Dated<BodyOf<'noted'>>[]
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

/** Folds bench lines already in their fixed order. */
export const foldBench = (lines: readonly Line[]): Bench => {
  let checkIn: Bench['checkIn'] = null
  const steps: Record<string, StepRecord & { since?: number }> = {}
  const unreadable: Record<string, string> = {}
  const checks: Record<string, Dated<BodyOf<'checked'>>> = {}
  const readings: Dated<BodyOf<'reading'>>[] = []
  const polished: Dated<BodyOf<'polished'>>[] = []
  const allowed: Dated<BodyOf<'allowed'>>[] = []
  const findings: Dated<BodyOf<'found'>>[] = []
  const removed: Dated<BodyOf<'removed'>>[] = []
  const refitted = new Set<string>()
  const notes: Dated<BodyOf<'noted'>>[] = []

  const stop = (line: Line, state: 'broken-off' | 'done'): void => {
    const body = line.body as BodyOf<'done'>
    const was = steps[body.step]
    const ran = was?.since === undefined ? 0 : blockMinutes(was.since, line.at)
    const given = state === 'done' ? body.minutes : undefined
    steps[body.step] = {
      step: body.step,
      state,
      minutes: given ?? (was?.minutes ?? 0) + ran,
      entered: given !== undefined,
      by: line.by,
      lastAt: line.at,
    }
  }
  for (const line of lines) {
    const stamp = { id: line.id, at: line.at, by: line.by }
    switch (line.kind) {
      case 'checked-in':
        checkIn = { ...(line.body as BodyOf<'checked-in'>), ...stamp }
        break
      case 'began': {
        const { step } = line.body as BodyOf<'began'>
        const was = steps[step]
        steps[step] = {
          step,
          state: 'begun',
          minutes: was?.minutes ?? 0,
          entered: was?.entered ?? false,
          by: line.by,
          lastAt: line.at,
          since: line.at,
        }
        break
      }
      case 'broke-off':
        stop(line, 'broken-off')
        break
      case 'done':
        stop(line, 'done')
        break
      case 'reading':
        readings.push({ ...(line.body as BodyOf<'reading'>), ...stamp })
        break
      case 'unreadable': {
        const body = line.body as BodyOf<'unreadable'>
        unreadable[body.panel] = body.why
        break
      }
      case 'polished':
        polished.push({ ...(line.body as BodyOf<'polished'>), ...stamp })
        break
      case 'allowed':
        allowed.push({ ...(line.body as BodyOf<'allowed'>), ...stamp })
        break
      case 'found':
        findings.push({ ...(line.body as BodyOf<'found'>), ...stamp })
        break
      case 'removed':
        removed.push({ ...(line.body as BodyOf<'removed'>), ...stamp })
        break
      case 'refitted':
        refitted.add((line.body as BodyOf<'refitted'>).removal)
        break
      case 'checked': {
        const body = line.body as BodyOf<'checked'>
        checks[body.check] = { ...body, ...stamp }
        break
      }
      case 'noted':
        notes.push({ ...(line.body as BodyOf<'noted'>), ...stamp })
        break
    }
  }
  return {
    checkIn,
    steps: Object.fromEntries(
      Object.entries(steps)
        .sort(([a], [b]) => (a < b ? -1 : 1))
        .map(([id, { since: _since, ...record }]) => [id, record]),
    ),
    readings,
    unreadable,
    polished,
    allowed,
    findings,
    removals: removed.map((r) => ({ ...r, refitted: refitted.has(r.id) })),
    checks,
    notes,
    inHand: foldInHand(lines),
  }
}
