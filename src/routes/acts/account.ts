import { agreedPrice } from '../../docket/agreed-price'
import type { Docket, Revision } from '../../docket/fold'
import type { BodyOf, Offer } from '../../docket/kinds'
import { type Account, type AccountBench, accountFrom } from '../../jobsheet/account'
import { decimalFromMinor } from '../../kernel/currency'
import { sumOf } from '../../kernel/money'
import { roundProduct } from '../../kernel/rounding'
import type { StoredEstimate } from '../../store/estimates'
import { csvRow } from '../http/csv'
import { invalid, Problem } from '../http/problem'
import type { Call, Load, Studio } from '../route'
import { agreedRevision, estimateBehind } from './agreed'
import { checkMatch, type Desk, write } from './desk'
import { todayOf } from './estimating'

type Any = Call<unknown, unknown, Load>

/** A job that ended before it was done, whether its car is still here or not. */
const isPart = ({ state, moved }: Docket): boolean =>
  state === 'part-done' || (state === 'handed-over' && moved?.to === 'part-done')

/** What the price fell by when measuring shrank the result, net and tax; of half a job its share. */
const lessFor = (docket: Docket, offer: Pick<Offer, 'net' | 'tax'>, found: Account) => {
  const { net, tax } = agreedPrice({ ...offer, total: offer.net + offer.tax }, docket.reIssues)
  const charged = sumOf(found.lines.map((l) => l.charged))
  const share = (whole: number): number =>
    whole <= 0 || offer.net <= 0
      ? 0
      : roundProduct(whole, Math.min(charged, offer.net), offer.net, 'half-up')
  return { smaller: 0 - share(offer.net - net), lessTax: 0 - share(offer.tax - tax) }
}

/** What was agreed beside what was done, as money. Minor units net, extras with their own tax. */
export const accountOf = (
  { docket }: Pick<Desk, 'docket'>,
  revision: Revision | null,
  studio: Studio,
): Account & { readonly deposit: number; readonly smaller: number } => {
  const extras = docket.extras
    .filter((e) => e.decision?.decision === 'agree')
    .map(({ extra, amount, tax, minutes }) => ({ extra, amount, tax, minutes }))
  const offer = revision?.offer ?? { lines: [], net: 0, tax: 0, deposit: 0 }
  const { taxMillionths, taxRounding, taxBasis } = studio.engine
  const tax = {
    millionths: revision?.tax?.millionths ?? taxMillionths,
    rounding: taxRounding,
    basis: taxBasis,
  }
  const bench: AccountBench = docket.bench.steps
  const found = accountFrom(offer, bench, extras, tax, isPart(docket))
  const { smaller, lessTax } = lessFor(docket, offer, found)
  const less = { net: found.net + smaller, tax: found.tax + lessTax }
  return { ...found, ...less, total: less.net + less.tax, smaller, deposit: offer.deposit }
}

export const PAID = ['deposit', 'part', 'rest', 'back'] as const

export type PaidGiven = Pick<BodyOf<'paid'>, 'what' | 'amount'> & {
  readonly on?: string | undefined
}

/** Writes down money the studio received, or gave back. Nothing is paid through the program. */
export const notePaid = (call: Any, desk: Desk, given: PaidGiven) => {
  checkMatch(call, desk)
  if (desk.docket.agreed === null)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.no-quote' },
      more: { state: desk.docket.state, moves: [] },
    })
  const today = todayOf(call.studio, call.now)
  const on = given.on ?? today
  if (on > today) throw invalid([{ pointer: '/on', code: 'ERR_FUTURE' }])
  return write(call, desk, [{ kind: 'paid', body: { what: given.what, amount: given.amount, on } }])
}

/** The account as it is shown: lines, extras, tax, what was asked and received, and what is left. */
export const accountView = (call: Any, desk: Desk, stored: readonly StoredEstimate[]) => {
  const { docket, texts } = desk
  const revision = agreedRevision(desk)
  const estimate = estimateBehind(revision, stored)
  if (docket.agreed === null || revision === null || estimate === null)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.no-quote' },
      more: { state: docket.state, moves: [] },
    })
  const { words } = call.studio
  const counted = accountOf(desk, revision, call.studio)
  const handed = docket.handedOver
  const final = handed?.account ?? counted
  const paid = [
    ...docket.paid.map((p) => ({
      what: p.what,
      amount: p.what === 'back' ? -p.amount : p.amount,
      on: p.on,
    })),
    ...(handed?.account.paid
      ? [
          {
            what: 'rest' as const,
            amount: handed.account.paid,
            on: todayOf(call.studio, handed.at),
          },
        ]
      : []),
  ]
  const paidTotal = sumOf(paid.map((p) => p.amount))
  const named = new Map(estimate.steps.flatMap((s) => (s.name ? [[s.id, s.name] as const] : [])))
  const nameOf = (step: string, name: string | null): string => {
    const own = name ?? named.get(step)
    return own ?? (words.has(`step.${step}`) ? words.say(`step.${step}`) : step)
  }
  return {
    state: handed ? ('final' as const) : isPart(docket) ? ('part' as const) : ('open' as const),
    reference: docket.reference,
    revision: revision.revision,
    currency: revision.offer.currency,
    offered: {
      net: revision.offer.net,
      tax: revision.offer.tax,
      total: revision.offer.total,
    },
    lines: counted.lines.map((l) => ({ ...l, text: nameOf(l.step, l.name) })),
    extras: counted.extras.map((e) => {
      const asked = docket.extras.find((x) => x.extra === e.extra)
      return {
        ...e,
        text: asked ? (texts.get(asked.text.text) ?? '') : '',
        total: e.amount + e.tax,
      }
    }),
    /** What the studio took off or put on at the hand-over, net. */
    corrected: final.net - counted.net,
    /** What the price fell by when measuring shrank the result; zero or less. */
    smaller: counted.smaller,
    net: final.net,
    tax: final.tax,
    total: final.total,
    deposit: counted.deposit,
    paid,
    paidTotal,
    balance: final.total - paidTotal,
  }
}
export type AccountView = ReturnType<typeof accountView>

/** The account for a spreadsheet: no cell of it is taken for a formula. */
export const accountCsv = (a: AccountView): string => {
  const money = (amount: number): string => {
    const text = decimalFromMinor(amount, a.currency)
    return text.ok ? text.value : String(amount)
  }
  const row = (
    kind: string,
    name: string,
    offered: number | null,
    charged: number | null,
    planned: number | null = null,
    used: number | null = null,
  ): string =>
    csvRow([
      a.reference,
      kind,
      name,
      offered === null ? null : money(offered),
      charged === null ? null : money(charged),
      planned,
      used,
      a.currency,
    ])
  return [
    csvRow([
      'reference',
      'kind',
      'name',
      'offered',
      'charged',
      'planned_minutes',
      'used_minutes',
      'currency',
    ]),
    ...a.lines.map((l) => row('line', l.text, l.offered, l.charged, l.planned, l.used)),
    ...a.extras.map((e) => row('extra', e.text, null, e.amount, e.minutes)),
    ...(a.smaller === 0 ? [] : [row('smaller-result', '', null, a.smaller)]),
    ...(a.corrected === 0 ? [] : [row('correction', '', null, a.corrected)]),
    row('net', '', a.offered.net, a.net),
    row('tax', '', a.offered.tax, a.tax),
    row('total', '', a.offered.total, a.total),
    ...a.paid.map((p) => row('paid', `${p.what} ${p.on}`, null, p.amount)),
    row('balance', '', null, a.balance),
  ].join('')
}
