import type { Docket } from '../../docket/fold'
import { isBenchKind } from '../../docket/kinds'
import type { Words } from '../../words/render'
import { type Fault, Problem } from '../http/problem'
import type { Who } from '../route'

const DAY_MS = 86_400_000

/** A clock running ahead may be a day out (own estimate); beyond that the list would lead with it. */
export const benchTime = (at: number, now: number): number => Math.min(at, now + DAY_MS)

/** What a look at the car may bring before anything was agreed. */
const LOOKING = new Set(['reading', 'unreadable', 'found', 'noted', 'struck'])
const OVER = new Set(['withdrawn', 'turned-down'])

/**
 * Work is written down on an agreed job; before, only what a look at the car brings; nothing on an
 * enquiry that is over. A job once dated takes late lines of a device that had no signal. Throws 409.
 */
export const mayWrite = (docket: Docket, kinds: readonly string[]): void => {
  if (docket.agreed !== null || docket.dated !== null) return
  if (!OVER.has(docket.state) && kinds.every((kind) => LOOKING.has(kind))) return
  throw new Problem('not-now', {
    detail: { key: 'problem.not-now.state' },
    more: { state: docket.state, moves: [] },
  })
}

type Given = {
  readonly kind: string
  readonly body: Readonly<Record<string, unknown>>
}

/** A panel nobody has words for would stand on no sheet and bring every page of the docket down. */
const panelFaults = ({ kind, body }: Given, words: Words): readonly Fault[] => {
  const named = ['reading', 'unreadable', 'polished', 'allowed'].includes(kind)
  if (!named || typeof body.panel !== 'string') return []
  return words.has(`panel.${body.panel}`) ? [] : [{ pointer: '/panel', code: 'ERR_VALUE' }]
}

/** A bench device strikes lines of the bench; a customer's yes or a quote is not its to undo. */
const strikeFaults = (
  { kind, body }: Given,
  lines: readonly { readonly id: string; readonly kind: string }[],
  who: Who,
): readonly Fault[] => {
  const target = kind === 'struck' ? lines.find((l) => l.id === body.line) : undefined
  if (target === undefined) return []
  const may = isBenchKind(target.kind)
    ? target.kind !== 'struck'
    : who.kind === 'owner' && target.kind !== 'opened'
  return may ? [] : [{ pointer: '/line', code: 'ERR_VALUE' }]
}

/** A check is left out only with a reason. */
const waiverFaults = ({ kind, body }: Given): readonly Fault[] =>
  kind === 'checked' && body.waived === true && body.why === undefined
    ? [{ pointer: '/why', code: 'ERR_REQUIRED' }]
    : []

/** What is wrong with a bench line besides its shape; pointers into its body. */
export const benchFaults = (
  line: Given,
  lines: readonly { readonly id: string; readonly kind: string }[],
  words: Words,
  who: Who,
): readonly Fault[] => [
  ...panelFaults(line, words),
  ...strikeFaults(line, lines, who),
  ...waiverFaults(line),
]
