import { mayRun } from '../../jobsheet/panels-now'
import { paintCaseOf } from '../../quote/paint-of'
import { type Fault, invalid } from '../http/problem'
import type { Call, Load } from '../route'
import type { Desk } from './desk'

type Any = Pick<Call<unknown, unknown, Load>, 'now' | 'studio'>
type Asked = { readonly panel?: unknown; readonly sequence?: unknown; readonly sets?: unknown }

const yearOf = (now: number): number => new Date(now).getUTCFullYear()

/** What the paint says to running this much on that panel, with or without the owner's word. */
const permission = (call: Any, desk: Desk, asked: Asked, word: boolean) => {
  const panel = String(asked.panel)
  const sequence = String(asked.sequence)
  const sets = Number(asked.sets ?? 1)
  const { bench } = desk.docket
  // All but the last set as if they were run: what is asked is whether the last one fits.
  const before = sets > 1 ? [{ panel, sequence, sets: sets - 1, at: call.now }] : []
  return mayRun(
    paintCaseOf(desk.answers, yearOf(call.now)),
    { ...bench, polished: [...bench.polished, ...before] },
    call.studio.engine.limits,
    { panel, sequence, word },
  )
}

/** An owner's word never passes the hard cap: what nothing can allow is refused. */
export const decisionFaults = (call: Any, desk: Desk, body: Asked): readonly Fault[] => {
  const given = permission(call, desk, body, true)
  return given.allowed ? [] : [{ pointer: '/sequence', code: 'ERR_BEYOND_CAP' }]
}

/**
 * Before a set is written down on the page: more than the panel allows is refused with what it needs.
 * What was run already may be written down all the same (`ran`), for the record must not lie. Throws 422.
 */
export const assertMayRun = (call: Any, desk: Desk, body: Asked, ran: boolean): void => {
  if (ran) return
  const word = desk.docket.bench.allowed.some(
    (a) => a.panel === body.panel && a.sequence === body.sequence,
  )
  const given = permission(call, desk, body, word)
  if (given.allowed) return
  const code = given.needs === 'decision' ? 'ERR_NEEDS_WORD' : 'ERR_BEYOND_ALLOWANCE'
  throw invalid([{ pointer: '/sequence', code }])
}
