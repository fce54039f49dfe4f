import { typedNumber } from '../../intake/typed-number'
import { blockersOf } from '../../jobsheet/checks'
import { decimalFromMinor, minorFromDecimal } from '../../kernel/currency'
import { BenchPage } from '../../pages/bench/bench-page'
import type { BenchView } from '../../pages/bench/bench-view'
import { viewOf } from '../../pages/bench/carried'
import { HandoverPage } from '../../pages/bench/handover-page'
import { lineName } from '../../pages/quote/quote-lines'
import { selectEstimatesOf } from '../../store/estimates'
import { accountOf } from '../acts/account'
import { type StoredEstimates, sheetFor } from '../acts/agreed'
import { carriedOf } from '../acts/carrying'
import { type Desk, deskLoad, openDesk } from '../acts/desk'
import { agreementView } from '../acts/extras'
import { stillOpen } from '../acts/handing-over'
import { invalid, type Problem } from '../http/problem'
import type { Call, Form, Outcome } from '../route'
import { type Any, fieldErrors, formOf, frameOf, keptOf, onceOf, orAgain, page } from './page'

export const load = ({ params }: { readonly params: Readonly<Record<string, string>> }) => ({
  ...deskLoad(params.id ?? ''),
  estimates: selectEstimatesOf(params.id ?? ''),
})

export const yearOf = (now: number): number => new Date(now).getUTCFullYear()

export const benchView = (
  call: Any,
  desk: Desk,
  stored: StoredEstimates,
  step: string | null,
): BenchView => {
  const view = viewOf(carriedOf(desk, stored, call.studio, yearOf(call.now)), step)
  return view.agreement ? { ...view, agreement: agreementView(desk) } : view
}

export const benchPage = (
  call: Any,
  desk: Desk,
  stored: StoredEstimates,
  step: string | null,
  problem?: Problem,
): Outcome =>
  page(
    <BenchPage
      frame={frameOf(call)}
      rev={desk.docket.rev}
      view={benchView(call, desk, stored, step)}
      once={onceOf(call)}
      {...(problem ? { errors: fieldErrors(call, problem), kept: keptOf(formOf(call)) } : {})}
    />,
    problem ? 422 : 200,
  )

/** The act of a form on the sheet: the desk opened, and where it is refused the sheet again with what was typed. */
export const benchForm =
  <C extends Call<unknown, unknown, ReturnType<typeof load>>>(
    act: (call: C, desk: Desk, form: Form) => Promise<Outcome> | Outcome,
  ) =>
  (call: C): Promise<Outcome> => {
    const desk = openDesk(call.loaded)
    const form = formOf(call)
    return orAgain(
      () => act(call, desk, form),
      (problem) => benchPage(call, desk, call.loaded.estimates, form.get('step'), problem),
    )
  }

/** A line typed on a page of the server: its own device name, numbered after what is there. */
export const pageLine = (call: Any, desk: Desk, kind: string, body: Record<string, unknown>) => ({
  id: call.newId(),
  kind,
  body: body as never,
  device: 'page',
  n: desk.docket.rev + 1,
  at: call.now,
})

export const handoverPage = (
  call: Any,
  desk: Desk,
  stored: StoredEstimates,
  problem?: Problem,
): Outcome => {
  const { sheet, revision } = sheetFor(desk, stored, yearOf(call.now), call.studio.engine.limits)
  const { words, profile } = call.studio
  const account = accountOf(desk, revision, call.studio)
  const net = decimalFromMinor(account.net, profile.currency)
  const agreed = desk.docket.extras.filter((e) => e.decision?.decision === 'agree')
  return page(
    <HandoverPage
      frame={frameOf(call, { who: desk.docket.reference ?? '' })}
      id={desk.id}
      reference={desk.docket.reference ?? ''}
      car={desk.head?.title ?? ''}
      blockers={blockersOf(sheet.checks, desk.docket.extras, desk.docket.bench.removals)}
      account={{
        lines: [
          ...account.lines.map((l) => ({
            name: lineName(words, { step: l.step, ...(l.name === null ? {} : { name: l.name }) }),
            amount: l.charged,
          })),
          ...agreed.map((e) => ({ name: desk.texts.get(e.text.text) ?? '', amount: e.amount })),
        ],
        net: account.net,
        tax: account.tax,
        total: account.total,
      }}
      quotedTotal={revision.offer.total}
      openText={stillOpen(desk, words).join('\n')}
      light={desk.docket.bench.recorded.findLast((r) => r.what === 'light')?.value ?? ''}
      netText={net.ok ? net.value : ''}
      once={onceOf(call)}
      {...(problem ? { errors: fieldErrors(call, problem), kept: keptOf(formOf(call)) } : {})}
    />,
    problem ? 422 : 200,
  )
}

export const money = (
  typed: string | null,
  field: string,
  currency: string,
): number | undefined => {
  const text = typed?.trim() ?? ''
  if (text === '') return undefined
  const minor = minorFromDecimal(typedNumber(text) ?? text, currency)
  if (!minor.ok || minor.value < 0) throw invalid([{ pointer: `/${field}`, code: 'ERR_NUMBER' }])
  return minor.value
}

export const subject = (form: ReturnType<typeof formOf>): ReturnType<typeof formOf> => ({
  ...form,
  get: (name) => (name === 'subject' ? 'finding' : form.get(name)),
})
