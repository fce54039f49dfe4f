import type { Revision } from '../../docket/fold'
import { mayMove } from '../../docket/states'
import { blockersOf } from '../../jobsheet/checks'
import { panelsNow } from '../../jobsheet/panels-now'
import { benchReadings } from '../../jobsheet/readings'
import { recordOf } from '../../jobsheet/record'
import { mayNotLeaveWithout } from '../../jobsheet/refit'
import type { Sheet } from '../../jobsheet/sheet'
import { rateOf } from '../../kernel/money'
import type { Estimate } from '../../quote/estimate-types'
import { paintCaseOf } from '../../quote/paint-of'
import type { Stmt } from '../../store/db'
import { insertText } from '../../store/texts'
import type { Words } from '../../words/render'
import { wantedText } from '../../words/wanted-text'
import { invalid, Problem } from '../http/problem'
import type { Call, Load } from '../route'
import { accountOf } from './account'
import { checkMatch, type Desk, keepText, type Written, write } from './desk'
import { todayOf } from './estimating'
import { notNow } from './revising'

type Any = Call<unknown, unknown, Load>

export type HandoverGiven = {
  readonly mileage?: number | undefined
  readonly name?: string | undefined
  readonly open?: readonly string[] | undefined
  /** The day the car comes back for what stayed open. */
  readonly returns?: string | undefined
  readonly paid?: number | undefined
  /** The net as corrected by the studio, e.g. for work by time; absent: as agreed. */
  readonly net?: number | undefined
}

/** Hands the car over. Throws 409 naming every check that still keeps it here. */
export const handOver = (
  call: Any,
  desk: Desk,
  given: HandoverGiven,
  sheet: Sheet,
  revision: Revision,
) => {
  checkMatch(call, desk)
  const { state, extras, bench } = desk.docket
  const finished = state === 'on-bench' ? 'finished' : state
  if (!mayMove(finished, 'handed-over')) throw notNow(desk.docket, [])
  const blockers = blockersOf(sheet.checks, extras, bench.removals)
  if (blockers.length > 0)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.open-checks' },
      more: { state, open: blockers },
    })
  if (given.returns !== undefined && given.returns < todayOf(call.studio, call.now))
    throw invalid([{ pointer: '/returns', code: 'ERR_PAST' }])
  const agreed = accountOf(desk, revision, call.studio)
  const net = given.net ?? agreed.net
  const { taxMillionths, taxRounding } = call.studio.engine
  const tax = net === agreed.net ? agreed.tax : rateOf(net, taxMillionths, taxRounding)
  const total = net + tax
  const texts: Stmt[] = []
  const lines: Written[] = []
  if (state === 'on-bench') lines.push({ kind: 'moved', body: { to: 'finished' } })
  const name = given.name?.trim()
  const kept = name ? keepText(call, desk.id, 'handover.name', name) : null
  if (kept) texts.push(insertText(kept.row))
  lines.push({
    kind: 'handed-over',
    body: {
      account: { net, tax, total, ...(given.paid === undefined ? {} : { paid: given.paid }) },
      open: [...(given.open ?? [])],
      ...(given.returns === undefined ? {} : { returns: given.returns }),
      ...(given.mileage === undefined ? {} : { mileage: given.mileage }),
      ...(kept ? { name: kept.ref } : {}),
    },
  })
  const { writes, docket } = write(call, desk, lines)
  return { docket, writes: [...writes, ...texts] }
}

/** The record the owner keeps, as data. Throws 409 before the car was handed over. */
export const recordFor = (
  call: Any,
  desk: Desk,
  estimate: Estimate | null,
  revision: Revision | null,
) => {
  const handed = desk.docket.handedOver
  if (handed === null || estimate === null)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.state' },
      more: { state: desk.docket.state },
    })
  const day = todayOf(call.studio, handed.at)
  const { bench } = desk.docket
  const panels = panelsNow(
    paintCaseOf(desk.answers, new Date(handed.at).getUTCFullYear()),
    bench,
    call.studio.engine.limits,
  )
  return {
    date: day,
    record: recordOf(estimate, benchReadings(bench), bench, day, panels),
    kept: bench.recorded.map(({ what, value }) => ({ what, value })),
    mileage: { in: bench.checkIn?.mileage ?? null, out: handed.mileage ?? null },
    waived: Object.values(bench.checks)
      .filter((c) => c.waived)
      .map((c) => ({ check: c.check, why: c.why ? (desk.texts.get(c.why.text) ?? '') : '' })),
    returns: handed.returns ?? null,
    account: {
      net: handed.account.net,
      tax: handed.account.tax,
      total: handed.account.total,
      deposit: revision?.offer.deposit ?? 0,
      paid: handed.account.paid ?? null,
    },
    open: handed.open,
    extras: desk.docket.extras.map((e) => ({
      extra: e.extra,
      text: desk.texts.get(e.text.text) ?? '',
      total: e.amount + e.tax,
      decision: e.decision?.decision ?? null,
    })),
  }
}

/** What stays open unless it is settled first: parts not back on that may follow, and parts still coming. */
export const stillOpen = (desk: Desk, words: Words): readonly string[] => {
  const { bench } = desk.docket
  const off = bench.removals
    .filter((r) => !r.refitted && !mayNotLeaveWithout(r))
    .map((r) => words.say('page.handover.off', { item: r.item, place: r.place }))
  const items = new Set([...Object.keys(bench.inHand.wanted), ...Object.keys(bench.inHand.supply)])
  const coming = [...items]
    .filter((item) => bench.inHand.supply[item]?.state !== 'in-hand')
    .map((item) => {
      const thing = bench.inHand.wanted[item]?.thing ?? bench.inHand.supply[item]?.thing
      return words.say('page.handover.coming', { thing: thing ?? wantedText(item, words) })
    })
  return [...off, ...coming]
}
