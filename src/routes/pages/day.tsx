import { paths } from '../../pages/paths'
import { DAY_STATES, DayPage } from '../../pages/quote/day-page'
import { dayFile, dayView } from '../acts/day'
import { type Desk, deskLoad, openDesk } from '../acts/desk'
import { tellAfter } from '../acts/telling-after'
import { invalid, type Problem } from '../http/problem'
import { type Route, route } from '../route'
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
  textOf,
} from './page'
import { talkOf } from './quote-render'

const load = ({ params }: { readonly params: Readonly<Record<string, string>> }) =>
  deskLoad(params.id ?? '')

const dayPage = (call: Any, desk: Desk, problem?: Problem) => {
  const { reference } = desk.docket
  const state = DAY_STATES.find((s) => s === desk.docket.state)
  if (state === undefined) return seeOther(paths.conversation(desk.id))
  return page(
    <DayPage
      frame={frameOf(call, {
        home: paths.start,
        ...(reference ? { reference, who: reference } : {}),
      })}
      id={desk.id}
      once={onceOf(call)}
      {...dayView(call.studio, desk)}
      state={state}
      replies={talkOf(call, desk).flatMap((t) => (t.from === 'studio' ? [t.text] : []))}
      {...(problem ? { errors: fieldErrors(call, problem), kept: keptOf(formOf(call)) } : {})}
    />,
    problem ? 422 : 200,
  )
}

export const dayRoutes: readonly Route[] = [
  route({
    id: 'page.day',
    face: 'page',
    method: 'GET',
    path: '/e/:id/day',
    rights: 'customer',
    summary: 'How it stands with the car, and afterwards whether all is well.',
    answers: { 200: 'other' },
    load,
    act: (call) => dayPage(call, openDesk(call.loaded)),
  }),
  route({
    id: 'page.day.file',
    face: 'page',
    method: 'GET',
    path: '/e/:id/day.ics',
    rights: 'customer',
    summary: 'The day as a calendar file.',
    answers: { 200: 'other' },
    load,
    act: (call) => ({
      status: 200,
      text: { body: dayFile(call, openDesk(call.loaded)), mime: 'text/calendar; charset=utf-8' },
      headers: { 'content-disposition': 'attachment; filename="car.ics"' },
    }),
  }),
  route({
    id: 'page.told',
    face: 'page',
    method: 'POST',
    path: '/e/:id/told',
    rights: 'customer',
    summary: 'Say that all is well after the hand-over, or what is wrong.',
    body: 'multipart',
    answers: { 303: null },
    again: true,
    rate: { name: 'decide', perMinute: 120 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      return orAgain(
        async () => {
          const well = form.get('well')
          if (well !== 'yes' && well !== 'no')
            throw invalid([{ pointer: '/well', code: 'ERR_REQUIRED' }])
          const given = { well: well === 'yes', text: textOf(form, 'text', 2000) }
          const { docket: _, ...done } = await tellAfter(call, desk, given, form)
          return seeOther(paths.day(desk.id), done)
        },
        (problem) => dayPage(call, desk, problem),
      )
    },
  }),
]
