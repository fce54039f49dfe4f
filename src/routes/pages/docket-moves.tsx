import { STATES } from '../../docket/states'
import { typedNumber } from '../../intake/typed-number'
import { minorFromDecimal } from '../../kernel/currency'
import { paths } from '../../pages/paths'
import { dateJob } from '../acts/dating'
import { datedCars, daysLoad } from '../acts/days'
import { checkMatch, openDesk } from '../acts/desk'
import { vouch } from '../acts/doubting'
import { eraseLoad, eraseMine } from '../acts/erasing'
import { reply } from '../acts/replying'
import { moveAndTell } from '../acts/telling'
import { invalid } from '../http/problem'
import { type Call, type Form, type Route, route } from '../route'
import { docketForm, docketPage, inForce, load, messageView, withText } from './docket-render'
import { type Any, formOf, keptOf, seeOther, textOf, typedIn, wholeOf, withRev } from './page'

/** The inspection as it is offered: both figures, or neither. */
const lookOverOf = (call: Any, form: Form, to: string) => {
  const typed = typedIn(form, 'look-amount')
  if (to !== 'look-over' || form.get('look-minutes') === null) return null
  const minutes = wholeOf(form, 'look-minutes') ?? Number.NaN
  const minor = minorFromDecimal(typedNumber(typed ?? '') ?? '', call.studio.profile.currency)
  const faults = [
    ...(minutes >= 5 && minutes <= 600 ? [] : [{ pointer: '/look-minutes', code: 'ERR_NUMBER' }]),
    ...(minor.ok ? [] : [{ pointer: '/look-amount', code: 'ERR_NUMBER' }]),
  ]
  if (faults.length > 0 || !minor.ok) throw invalid(faults)
  return { minutes, amount: minor.value }
}

const dateLoad = (input: Parameters<typeof load>[0]) => ({ ...load(input), ...daysLoad() })

export const docketMoveRoutes: readonly Route[] = [
  route({
    id: 'page.docket.date',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/date',
    rights: 'owner',
    summary: 'Set the day the work begins.',
    body: 'form',
    answers: { 303: null, 409: 'other' },
    load: dateLoad,
    act: docketForm((call: Call<undefined, undefined, ReturnType<typeof dateLoad>>, desk, form) => {
      const start = typedIn(form, 'start') ?? ''
      if (!/^\d{4}-\d{2}-\d{2}$/.test(start))
        throw invalid([{ pointer: '/start', code: 'ERR_DATE' }])
      const time = typedIn(form, 'startTime')
      const at = /^([01]?\d|2[0-3]):([0-5]\d)$/.exec(time ?? '')
      if (time !== undefined && !at) throw invalid([{ pointer: '/startTime', code: 'ERR_TIME' }])
      const startMinute = at ? Number(at[1]) * 60 + Number(at[2]) : undefined
      const cars = datedCars(call.loaded, call.studio, call.now)
      const done = dateJob(call, desk, cars, { start, startMinute })
      // Against other cars only once that was read, for the very day it was read of.
      if (done.against && form.get('anyway') !== `${start} ${time ?? ''}`)
        return docketPage(
          call,
          desk,
          inForce(desk),
          { against: { ...done.against, start, time: time ?? '' }, kept: keptOf(form) },
          409,
        )
      return seeOther(paths.docket(desk.id), { writes: done.writes })
    }),
  }),
  route({
    id: 'page.docket.move',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/move',
    rights: 'bench',
    summary: 'Move a docket by hand.',
    body: 'form',
    answers: { 303: null, 200: 'other' },
    load,
    act: docketForm(async (call, desk, form) => {
      const to = STATES.find((s) => s === form.get('to'))
      if (!to) throw invalid([{ pointer: '/to', code: 'ERR_VALUE' }])
      const lookOver = lookOverOf(call, form, to)
      const why = textOf(form, 'why', 1000)
      const done = await moveAndTell(call, desk, to, why, {
        turn: textOf(form, 'turn', 1000),
        ...(lookOver ? { lookOver } : {}),
      })
      if (done.message === null) return seeOther(paths.docket(desk.id), { writes: done.writes })
      const now = withText({ ...desk, docket: done.docket }, done.docket.whyMoved, why)
      const message = messageView(call, desk, done.message)
      return { ...docketPage(call, now, inForce(now), { message }), writes: done.writes }
    }),
  }),
  route({
    id: 'page.docket.genuine',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/genuine',
    rights: 'owner',
    summary: 'Say that a doubted enquiry is genuine.',
    body: 'form',
    answers: { 303: null },
    load,
    act: docketForm((call, desk) =>
      seeOther(paths.docket(desk.id), { writes: vouch(call, desk).writes }),
    ),
  }),
  route({
    id: 'page.docket.reply',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/reply',
    rights: 'owner',
    summary: 'Reply to the customer’s question.',
    body: 'form',
    answers: { 303: null },
    load,
    act: docketForm((call, desk, form) => {
      const text = textOf(form, 'text', 2000)
      if (text === undefined) throw invalid([{ pointer: '/text', code: 'ERR_REQUIRED' }])
      const { writes } = reply(call, desk, text)
      return seeOther(paths.docket(desk.id), { writes })
    }),
  }),
  route({
    id: 'page.docket.erase',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/erasure',
    rights: 'owner',
    summary: 'Delete what tells who a customer is.',
    body: 'form',
    answers: { 303: null },
    load: ({ params }) => eraseLoad(params.id ?? ''),
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      checkMatch(withRev(call, form), desk)
      if (form.get('sure') === null) return seeOther(`${paths.docket(desk.id)}#erase`)
      return seeOther(paths.docket(desk.id), eraseMine(call, desk, call.loaded.estimates))
    },
  }),
]
