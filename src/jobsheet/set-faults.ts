import type { PaintInput } from '../quote/paint'
import type { PaintCase } from '../quote/paint-of'
import { mayRun, type PaintBench } from './panels-now'

type Asked = { readonly panel?: unknown; readonly sequence?: unknown; readonly sets?: unknown }
type Fault = { readonly pointer: string; readonly code: string }
type Bench = PaintBench & {
  readonly allowed: readonly { readonly panel: string; readonly sequence: string }[]
}

/** A car's paint with what the bench did to it so far. */
export type PaintNow = {
  readonly paint: PaintCase
  readonly bench: Bench
  readonly limits?: PaintInput['settings']
  /** UTC milliseconds. */
  readonly now: number
}

/** What the paint says to running this much on that panel, with or without the owner's word. */
const permission = ({ paint, bench, limits, now }: PaintNow, asked: Asked, word: boolean) => {
  const panel = String(asked.panel)
  const sequence = String(asked.sequence)
  const sets = Number(asked.sets ?? 1)
  // All but the last set as if they were run: what is asked is whether the last one fits.
  const before = sets > 1 ? [{ panel, sequence, sets: sets - 1, at: now }] : []
  return mayRun(paint, { ...bench, polished: [...bench.polished, ...before] }, limits, {
    panel,
    sequence,
    word,
  })
}

/** An owner's word never passes the hard cap: what nothing can allow is refused. */
export const decisionFaults = (now: PaintNow, asked: Asked): readonly Fault[] =>
  permission(now, asked, true).allowed ? [] : [{ pointer: '/sequence', code: 'ERR_BEYOND_CAP' }]

/**
 * Before a set is written down on the page: more than the panel allows is refused with what it needs.
 * What was run already may be written down all the same (`ran`), for the record must not lie.
 */
export const setFaults = (now: PaintNow, asked: Asked, ran: boolean): readonly Fault[] => {
  if (ran) return []
  const word = now.bench.allowed.some(
    (a) => a.panel === asked.panel && a.sequence === asked.sequence,
  )
  const given = permission(now, asked, word)
  if (given.allowed) return []
  const code = given.needs === 'decision' ? 'ERR_NEEDS_WORD' : 'ERR_BEYOND_ALLOWANCE'
  return [{ pointer: '/sequence', code }]
}
