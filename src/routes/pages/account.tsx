import { typedNumber } from '../../intake/typed-number'
import { parseDate } from '../../kernel/calendar'
import { minorFromDecimal } from '../../kernel/currency'
import { paths } from '../../pages/paths'
import { AccountPage } from '../../pages/studio/account-page'
import { selectEstimatesOf } from '../../store/estimates'
import { accountCsv, accountView, notePaid, PAID } from '../acts/account'
import { type Desk, openDesk } from '../acts/desk'
import { type Fault, invalid, type Problem } from '../http/problem'
import { studioInMoney } from '../http/studio'
import { type Route, route } from '../route'
import { load } from './docket-render'
import {
  type Any,
  fieldErrors,
  formOf,
  frameOf,
  keptOf,
  onceOf,
  orAgain,
  page,
  seeOther,
  typedIn,
  withRev,
} from './page'

const loadAll = (input: Parameters<typeof load>[0]) => ({
  ...load(input),
  estimates: selectEstimatesOf(input.params.id ?? ''),
})

type Stored = Parameters<typeof accountView>[2]

const accountPage = (call: Any, desk: Desk, stored: Stored, problem?: Problem) => {
  const account = accountView(call, desk, stored)
  const studio = studioInMoney(call.studio, account.currency, call.deps.catalogues)
  const reference = desk.docket.reference
  return page(
    <AccountPage
      frame={frameOf({ ...call, studio }, reference ? { who: reference, reference } : {})}
      id={desk.id}
      rev={desk.docket.rev}
      once={onceOf(call)}
      car={desk.head?.title ?? ''}
      account={account}
      {...(problem ? { errors: fieldErrors(call, problem), kept: keptOf(formOf(call)) } : {})}
    />,
    problem ? (problem.code === 'stale' ? 412 : 422) : 200,
  )
}

export const accountRoutes: readonly Route[] = [
  route({
    id: 'page.account',
    face: 'page',
    method: 'GET',
    path: '/studio/d/:id/account',
    rights: 'owner',
    summary: 'What was offered beside what it came to, and what is left to pay.',
    answers: { 200: 'other' },
    load: loadAll,
    act: (call) => accountPage(call, openDesk(call.loaded), call.loaded.estimates),
  }),
  route({
    id: 'page.account.file',
    face: 'page',
    method: 'GET',
    path: '/studio/d/:id/account.csv',
    rights: 'owner',
    summary: 'The account for a spreadsheet.',
    answers: { 200: 'other' },
    load: loadAll,
    act: (call) => ({
      status: 200,
      text: {
        body: accountCsv(accountView(call, openDesk(call.loaded), call.loaded.estimates)),
        mime: 'text/csv; charset=utf-8',
      },
      headers: { 'content-disposition': 'attachment; filename="account.csv"' },
    }),
  }),
  route({
    id: 'page.paid',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/paid',
    rights: 'owner',
    summary: 'Write down money that was received or given back.',
    body: 'form',
    answers: { 303: null },
    load: loadAll,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      return orAgain(
        () => {
          const what = PAID.find((w) => w === form.get('what'))
          const { currency } = accountView(call, desk, call.loaded.estimates)
          const typed = typedIn(form, 'amount') ?? ''
          const amount = minorFromDecimal(typedNumber(typed) ?? '', currency)
          const on = typedIn(form, 'on')
          const faults: Fault[] = []
          if (!what) faults.push({ pointer: '/what', code: 'ERR_VALUE' })
          if (!amount.ok || amount.value <= 0)
            faults.push({ pointer: '/amount', code: 'ERR_NUMBER' })
          if (on !== undefined && !parseDate(on).ok)
            faults.push({ pointer: '/on', code: 'ERR_DATE' })
          if (faults.length > 0 || !what || !amount.ok) throw invalid(faults)
          const done = notePaid(withRev(call, form), desk, { what, amount: amount.value, on })
          return seeOther(paths.docketAccount(desk.id), { writes: done.writes })
        },
        (problem) => accountPage(call, desk, call.loaded.estimates, problem),
        ['invalid', 'stale'],
      )
    },
  }),
]
