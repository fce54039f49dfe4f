import { agreedPrice } from '../../docket/agreed-price'
import type { AfterNo } from '../../jobsheet/polish-word'
import { benchReadings } from '../../jobsheet/readings'
import { levelsOf, shrunkPanels } from '../../jobsheet/shrinkage'
import { rateOf } from '../../kernel/money'
import { estimate as estimateOf } from '../../quote/estimate'
import { enqueue } from '../../store/outbox'
import { insertText } from '../../store/texts'
import { type Fault, invalid, Problem } from '../http/problem'
import type { Call, Load } from '../route'
import { agreedWork, type StoredEstimates } from './agreed'
import { checkMatch, type Desk, keepText, write } from './desk'
import { inputOf } from './estimating'
import { notNow } from './revising'

type Any = Call<unknown, unknown, Load>

/** States in which the car is measured and not finished. */
const MEASURED_IN = new Set(['dated', 'on-bench', 'held', 'part-done', 'come-back'])

/**
 * What the readings before polishing leave of the agreed result: the same answers and changes once
 * more through the engine. Panels nobody has read, or that were polished already, are not asked about.
 */
export const shrinkage = (
  call: Pick<Any, 'studio' | 'now'>,
  desk: Desk,
  stored: StoredEstimates,
) => {
  const { revision, estimate } = agreedWork(desk, stored)
  const { bench } = desk.docket
  const polished = new Set(bench.polished.map((p) => p.panel))
  const made = estimateOf(
    inputOf(call.studio, call.now, desk.answers, {
      readings: benchReadings(bench).filter((r) => r.when !== 'after'),
      adjustments: revision.adjustments,
    }),
  )
  const read = new Set(made.paint.panels.filter((p) => p.total !== null).map((p) => p.panel))
  const promised = estimate.expectation.removedShare
  const found = made.expectation.removedShare
  const all = [...levelsOf(estimate.steps).keys()].every((p) => read.has(p) || polished.has(p))
  return {
    revision,
    panels: shrunkPanels(estimate.steps, made.steps).filter(
      (s) => read.has(s.panel) && !polished.has(s.panel),
    ),
    promised,
    // While panels are unread the rest may still come out as agreed.
    now: all || promised === null ? found : { low: found?.low ?? 0, high: promised.high },
  }
}

export type ReIssueGiven = {
  readonly text?: string | undefined
  /** The whole net price from now on, minor units; absent: as agreed. */
  readonly net?: number | undefined
}

/**
 * Asks the customer whether to go on with the smaller result. Throws 409 when no work is agreed, 422
 * when nothing shrank and nothing is said, or the price would rise (that is an extra).
 */
export const reIssue = (call: Any, desk: Desk, given: ReIssueGiven, stored: StoredEstimates) => {
  checkMatch(call, desk)
  if (!MEASURED_IN.has(desk.docket.state)) throw notNow(desk.docket, [])
  const { revision, panels, promised, now } = shrinkage(call, desk, stored)
  const before = agreedPrice(revision.offer, desk.docket.reIssues)
  const text = given.text?.trim()
  const faults: Fault[] = []
  if (panels.length === 0 && !text) faults.push({ pointer: '/text', code: 'ERR_NOTHING_SHRANK' })
  if (given.net !== undefined && given.net > before.net)
    faults.push({ pointer: '/net', code: 'ERR_NOT_DEARER' })
  if (faults.length > 0) throw invalid(faults)
  const { taxMillionths, taxRounding } = call.studio.engine
  const tax = given.net === undefined ? 0 : rateOf(given.net, taxMillionths, taxRounding)
  const price =
    given.net === undefined || given.net === before.net
      ? {}
      : { price: { net: given.net, tax, total: given.net + tax } }
  const kept = text ? keepText(call, desk.id, 're-issue', text) : null
  const issue = call.newId()
  const { writes, docket } = write(call, desk, [
    {
      kind: 're-issued',
      body: {
        issue,
        revision: revision.revision,
        panels: [...panels],
        promised,
        now,
        ...price,
        ...(kept ? { text: kept.ref } : {}),
      },
    },
  ])
  const message = enqueue({
    id: call.newId(),
    kind: 're-issue.asked',
    docket: desk.id,
    payload: { docket: desk.id, issue },
    dedupe: `re-issue:${issue}`,
    nextAt: call.now,
  })
  return {
    issue,
    docket,
    writes: [...writes, ...(kept ? [insertText(kept.row)] : []), message],
  }
}

export type ReIssueWord = {
  readonly decision: 'go-on' | 'no'
  /** With a no: what is done instead. */
  readonly instead?: AfterNo | undefined
  readonly name?: string | undefined
}

/** The customer's word on a smaller result, once; by the link, or taken down on the phone. */
export const decideReIssue = (
  call: Any,
  desk: Desk,
  issue: string,
  given: ReIssueWord,
  how: 'link' | 'phone',
) => {
  const asked = desk.docket.reIssues.find((r) => r.issue === issue)
  if (!asked) throw new Problem('unknown')
  if (asked.decision !== null)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.decided' },
      more: { decision: asked.decision.decision },
    })
  if (!MEASURED_IN.has(desk.docket.state)) throw notNow(desk.docket, [])
  const faults: Fault[] = []
  const name = given.name?.trim()
  if (!name) faults.push({ pointer: '/name', code: 'ERR_REQUIRED' })
  if (given.decision === 'no' && given.instead === undefined)
    faults.push({ pointer: '/instead', code: 'ERR_REQUIRED' })
  if (faults.length > 0 || !name) throw invalid(faults)
  const { ref, row } = keepText(call, desk.id, 're-issue.name', name)
  const { writes, docket } = write(call, desk, [
    {
      kind: 're-issue-decided',
      body: {
        issue,
        decision: given.decision,
        ...(given.decision === 'no' && given.instead ? { instead: given.instead } : {}),
        name: ref,
        how,
      },
    },
  ])
  const message = enqueue({
    id: call.newId(),
    kind: `re-issue.${given.decision}`,
    docket: desk.id,
    payload: { docket: desk.id, issue, decision: given.decision },
    dedupe: `re-issue-decided:${issue}`,
    nextAt: call.now,
  })
  return { docket, writes: [...writes, insertText(row), message] }
}

/** What was asked and said, with the texts; for the API of customer and bench. */
export const reIssueViews = (desk: Desk) =>
  desk.docket.reIssues.map((r) => ({
    issue: r.issue,
    panels: r.panels,
    promised: r.promised,
    now: r.now,
    price: r.price ?? null,
    text: r.text ? (desk.texts.get(r.text.text) ?? null) : null,
    askedAt: new Date(r.at).toISOString(),
    decision: r.decision
      ? { decision: r.decision.decision, instead: r.decision.instead ?? null, how: r.decision.how }
      : null,
  }))
