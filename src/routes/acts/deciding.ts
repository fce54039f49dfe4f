import type { Estimate } from '../../quote/estimate-types'
import type { Stmt } from '../../store/db'
import { enqueue } from '../../store/outbox'
import { insertText } from '../../store/texts'
import type { Words } from '../../words/render'
import { type Fault, invalid, Problem } from '../http/problem'
import type { Call, Load } from '../route'
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
}

/** The decide notes of the estimate behind a quote: each must be accepted by name. */
export const mustAccept = (made: Pick<Estimate, 'riskNotes'> | null): readonly string[] =>
  (made?.riskNotes ?? []).filter((n) => n.decision).map((n) => n.id)

const checkGiven = (given: DecisionGiven, needed: readonly string[], words: Words): void => {
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
    if (given.option !== undefined) faults.push({ pointer: '/option', code: 'ERR_NO_SUCH_OPTION' })
  }
  if (given.decision === 'ask' && !given.text?.trim())
    faults.push({ pointer: '/text', code: 'ERR_REQUIRED' })
  if (faults.length > 0) throw invalid(faults)
}

/**
 * The customer's word on the revision it has read. An old page cannot decide on a new revision, and
 * nothing is decided twice.
 */
export const decide = (call: Any, desk: Desk, given: DecisionGiven, needed: readonly string[]) => {
  checkMatch(call, desk)
  const { sent, state } = desk.docket
  if (!sent) throw new Problem('not-now', { detail: { key: 'problem.not-now.no-quote' } })
  if (sent.revision !== given.revision)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.other-revision' },
      more: { revision: sent.revision },
    })
  if (state !== 'quoted')
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.decided' },
      more: { state, moves: [] },
    })
  if (given.decision === 'accept' && todayOf(call.studio, call.now) > sent.validUntil)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.lapsed' },
      more: { validUntil: sent.validUntil },
    })
  checkGiven(given, needed, call.studio.words)
  const texts: Stmt[] = []
  const refs: { name?: { text: string }; text?: { text: string } } = {}
  for (const field of ['name', 'text'] as const) {
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

const ASKED_IN = new Set(['dated', 'on-bench', 'held', 'finished', 'part-done', 'come-back'])

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
