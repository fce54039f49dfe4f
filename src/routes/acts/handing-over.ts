import type { Revision } from '../../docket/fold'
import { mayMove } from '../../docket/states'
import { blockersOf } from '../../jobsheet/checks'
import { benchReadings } from '../../jobsheet/readings'
import { recordOf } from '../../jobsheet/record'
import type { Sheet } from '../../jobsheet/sheet'
import { rateOf } from '../../kernel/money'
import type { Estimate } from '../../quote/estimate-types'
import type { Stmt } from '../../store/db'
import { insertText } from '../../store/texts'
import { Problem } from '../http/problem'
import type { Call, Load } from '../route'
import { checkMatch, type Desk, keepText, type Written, write } from './desk'
import { todayOf } from './estimating'
import { notNow } from './revising'

type Any = Call<unknown, unknown, Load>

export type HandoverGiven = {
  readonly mileage?: number | undefined
  readonly name?: string | undefined
  readonly open?: readonly string[] | undefined
  readonly paid?: number | undefined
  /** The net as corrected by the studio, e.g. for work by time; absent: as agreed. */
  readonly net?: number | undefined
}

/** The final account: what was agreed, and the extras agreed to. Minor units. */
export const accountOf = (desk: Desk, revision: Revision | null) => {
  const extras = desk.docket.extras.filter((e) => e.decision?.decision === 'agree')
  const net = (revision?.offer.net ?? 0) + extras.reduce((s, e) => s + e.amount, 0)
  const tax = (revision?.offer.tax ?? 0) + extras.reduce((s, e) => s + e.tax, 0)
  return { net, tax, total: net + tax, deposit: revision?.offer.deposit ?? 0 }
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
  const agreed = accountOf(desk, revision)
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
  return {
    date: day,
    record: recordOf(estimate, benchReadings(desk.docket.bench), desk.docket.bench, day),
    account: { ...accountOf(desk, revision), paid: handed.account.paid ?? null },
    open: handed.open,
    extras: desk.docket.extras.map((e) => ({
      extra: e.extra,
      text: desk.texts.get(e.text.text) ?? '',
      total: e.amount + e.tax,
      decision: e.decision?.decision ?? null,
    })),
  }
}
