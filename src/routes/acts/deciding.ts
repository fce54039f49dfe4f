import { asChosen } from '../../docket/as-chosen'
import type { Revision } from '../../docket/fold'
import type { UNANSWERED } from '../../docket/kinds'
import type { Estimate } from '../../quote/estimate-types'
import type { Stmt } from '../../store/db'
import type { StoredEstimate } from '../../store/estimates'
import { enqueue } from '../../store/outbox'
import { insertText } from '../../store/texts'
import type { Words } from '../../words/render'
import { type Fault, invalid, Problem } from '../http/problem'
import type { Call, Load } from '../route'
import { estimateBehind } from './agreed'
import { checkMatch, type Desk, keepText, write } from './desk'
import { todayOf } from './estimating'

type Any = Call<unknown, unknown, Load>

export type DecisionGiven = {
  readonly decision: 'accept' | 'decline' | 'ask'
  readonly revision: number
  readonly name?: string | undefined
  readonly option?: string | undefined
  readonly acknowledged?: readonly string[] | undefined
  readonly text?: string | undefined
  /** With a yes: extras up to this much in all need no asking, with tax, minor units. */
  readonly extrasLimit?: number | undefined
  /** With a yes: what counts where we ask and nobody answers. */
  readonly unanswered?: (typeof UNANSWERED)[number] | undefined
  /** Who decides then. */
  readonly decides?: string | undefined
}

/** States in which the customer is asked, and may ask, about work that is agreed. */
const ASKED_IN = new Set(['dated', 'on-bench', 'held', 'finished', 'part-done', 'come-back'])

/** The decide notes of the estimate behind a quote: each must be accepted by name. */
export const mustAccept = (made: Pick<Estimate, 'riskNotes'> | null): readonly string[] =>
  (made?.riskNotes ?? []).filter((n) => n.decision).map((n) => n.id)

/** The option must be one of the revision's, and be named where there is a choice. */
const optionFaults = (sent: Revision, option: string | undefined): readonly Fault[] => {
  if (option === undefined && sent.options)
    return [{ pointer: '/option', code: 'ERR_OPTION_REQUIRED' }]
  const known = option === undefined || sent.options?.some((o) => o.option === option)
  return known ? [] : [{ pointer: '/option', code: 'ERR_NO_SUCH_OPTION' }]
}

const checkGiven = (
  given: DecisionGiven,
  sent: Revision,
  needed: readonly string[],
  words: Words,
): void => {
  const faults: Fault[] = []
  if (given.decision === 'accept') {
    if (!given.name?.trim()) faults.push({ pointer: '/name', code: 'ERR_REQUIRED' })
    for (const id of needed)
      if (!given.acknowledged?.includes(id))
        faults.push({
          pointer: '/acknowledged',
          code: 'ERR_NOT_ACKNOWLEDGED',
          params: { note: id, title: words.say(`risk.${id}`) },
        })
    faults.push(...optionFaults(sent, given.option))
    if (given.unanswered === 'named' && !given.decides?.trim())
      faults.push({ pointer: '/decides', code: 'ERR_REQUIRED' })
  }
  if (given.decision === 'ask' && !given.text?.trim())
    faults.push({ pointer: '/text', code: 'ERR_REQUIRED' })
  if (faults.length > 0) throw invalid(faults)
}

/** What a yes says besides the yes itself. */
const agreedWith = ({ option, extrasLimit, unanswered }: DecisionGiven) => ({
  ...(option === undefined ? {} : { option }),
  ...(extrasLimit === undefined ? {} : { extrasLimit }),
  ...(unanswered === undefined ? {} : { unanswered }),
})

/**
 * The customer's word on the revision it has read. An old page cannot decide on a new revision, and
 * nothing is decided twice.
 */
export const decide = (
  call: Any,
  desk: Desk,
  given: DecisionGiven,
  stored: readonly StoredEstimate[],
) => {
  checkMatch(call, desk)
  const { sent, state } = desk.docket
  if (!sent) throw new Problem('not-now', { detail: { key: 'problem.not-now.no-quote' } })
  if (sent.revision !== given.revision)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.other-revision' },
      more: { revision: sent.revision },
    })
  if (state !== 'quoted' && !(given.decision === 'ask' && ASKED_IN.has(state)))
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.decided' },
      more: { state, moves: [] },
    })
  if (given.decision === 'accept' && todayOf(call.studio, call.now) > sent.validUntil)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.lapsed' },
      more: { validUntil: sent.validUntil },
    })
  const needed = mustAccept(estimateBehind(asChosen(sent, given.option), stored))
  checkGiven(given, sent, needed, call.studio.words)
  const texts: Stmt[] = []
  const accepts = given.decision === 'accept'
  const refs: { name?: { text: string }; text?: { text: string }; decides?: { text: string } } = {}
  for (const field of ['name', 'text', 'decides'] as const) {
    if (field === 'decides' && !(accepts && given.unanswered === 'named')) continue
    const typed = given[field]?.trim()
    if (!typed) continue
    const { ref, row } = keepText(call, desk.id, `decision.${field}`, typed)
    refs[field] = ref
    texts.push(insertText(row))
  }
  const { writes, docket } = write(call, desk, [
    {
      kind: 'decided',
      body: {
        decision: given.decision,
        revision: given.revision,
        acknowledged: [...(given.acknowledged ?? [])].filter((id) => needed.includes(id)),
        ...refs,
        ...(accepts ? agreedWith(given) : {}),
      },
    },
  ])
  const message = enqueue({
    id: call.newId(),
    kind: `quote.${given.decision}`,
    docket: desk.id,
    payload: { docket: desk.id, revision: given.revision, decision: given.decision },
    dedupe: `decided:${desk.id}:${docket.rev}`,
    nextAt: call.now,
  })
  return { docket, writes: [...writes, ...texts, message] }
}

/** The customer takes the enquiry back. */
export const withdraw = (call: Any, desk: Desk) => {
  checkMatch(call, desk)
  const may = ['answering', 'received', 'look-over', 'quoted', 'agreed']
  if (!may.includes(desk.docket.state))
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.state' },
      more: { state: desk.docket.state, moves: [] },
    })
  return write(call, desk, [{ kind: 'moved', body: { to: 'withdrawn' } }])
}

/** The customer agrees to or refuses an extra; a decision is made once. */
export const decideExtra = (
  call: Any,
  desk: Desk,
  id: string,
  given: { readonly decision: 'agree' | 'refuse'; readonly name: string },
  how: 'link' | 'phone',
) => {
  const extra = desk.docket.extras.find((e) => e.extra === id)
  if (!extra) throw new Problem('unknown')
  if (!ASKED_IN.has(desk.docket.state))
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.state' },
      more: { state: desk.docket.state, moves: [] },
    })
  if (extra.decision !== null)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.decided' },
      more: { decision: extra.decision.decision },
    })
  const { ref, row } = keepText(call, desk.id, 'extra.name', given.name)
  const { writes, docket } = write(call, desk, [
    { kind: 'extra-decided', body: { extra: id, decision: given.decision, name: ref, how } },
  ])
  return { docket, writes: [...writes, insertText(row)] }
}
