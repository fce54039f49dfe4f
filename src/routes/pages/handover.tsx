import { parseDay } from '../../kernel/calendar'
import { paths } from '../../pages/paths'
import { sheetFor } from '../acts/agreed'
import { openDesk } from '../acts/desk'
import { handOver } from '../acts/handing-over'
import { invalid, tooLong } from '../http/problem'
import { type Form, type Route, route } from '../route'
import { handoverPage, load, money, yearOf } from './bench-render'
import { formOf, orAgain, seeOther, textOf, typedIn, wholeOf } from './page'

export const handoverRoutes: readonly Route[] = [
  route({
    id: 'page.handover',
    face: 'page',
    method: 'GET',
    path: '/bench/:id/handover',
    rights: 'bench',
    summary: 'What still stands in the way, and the account.',
    answers: { 200: 'other' },
    load,
    act: (call) => handoverPage(call, openDesk(call.loaded), call.loaded.estimates),
  }),
  route({
    id: 'page.handover.done',
    face: 'page',
    method: 'POST',
    path: '/bench/:id/handover',
    rights: 'bench',
    summary: 'Hand the car over.',
    body: 'form',
    answers: { 303: null },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      return orAgain(
        () => {
          const { sheet, revision } = sheetFor(
            desk,
            call.loaded.estimates,
            yearOf(call.now),
            call.studio.engine.limits,
          )
          const mileage = wholeOf(form, 'mileage')
          if (Number.isNaN(mileage)) throw invalid([{ pointer: '/mileage', code: 'ERR_NUMBER' }])
          const done = handOver(
            call,
            desk,
            {
              mileage,
              name: textOf(form, 'name', 200),
              paid: money(form.get('paid'), 'paid', call.studio.profile.currency),
              net: money(form.get('net'), 'net', call.studio.profile.currency),
              open: openLines(form),
              returns: dayOf(form, 'returns'),
            },
            sheet,
            revision,
          )
          return seeOther(paths.docket(desk.id), { writes: done.writes })
        },
        (problem) => handoverPage(call, desk, call.loaded.estimates, problem),
      )
    },
  }),
]

/** A day as typed; undefined for nothing. Throws Problem 422 for what is none. */
const dayOf = (form: Form, name: string): string | undefined => {
  const typed = typedIn(form, name)
  if (typed !== undefined && !parseDay(typed).ok)
    throw invalid([{ pointer: `/${name}`, code: 'ERR_DATE_FORMAT' }])
  return typed
}

const MOST_OPEN = 20

/** What is left open, a thing a line. Throws Problem 422 past 20 lines of 200 characters. */
const openLines = (form: Form): readonly string[] => {
  const typed = (textOf(form, 'open', MOST_OPEN * 201) ?? '').split('\n').map((s) => s.trim())
  const lines = typed.filter(Boolean)
  const long = lines.find((s) => s.length > 200)
  if (long !== undefined) throw invalid([tooLong('/open', long, 200)])
  if (lines.length > MOST_OPEN)
    throw invalid([{ pointer: '/open', code: 'ERR_TOO_MANY', params: { most: MOST_OPEN } }])
  return lines
}
