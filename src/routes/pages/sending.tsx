import { LeavePage } from '../../pages/intake/leave-page'
import { SentPage } from '../../pages/intake/sent-page'
import type { MadeLink } from '../../pages/parts/link-maker'
import { paths } from '../../pages/paths'
import { customerLink } from '../acts/customer-link'
import { type Desk, openDesk } from '../acts/desk'
import { submit } from '../acts/submit'
import { invalid } from '../http/problem'
import { type Route, route } from '../route'
import { firstDone, load, range } from './conversation-render'
import { type Any, fieldErrors, formOf, frameOf, onceOf, orAgain, page, seeOther } from './page'

export const sendingRoutes: readonly Route[] = [
  route({
    id: 'page.leave',
    face: 'page',
    method: 'GET',
    path: '/e/:id/leave',
    rights: 'customer',
    summary: 'How to come back; looking at it makes no link.',
    answers: { 200: 'other' },
    load,
    act: (call) => leavePage(call, openDesk(call.loaded)),
  }),
  route({
    id: 'page.link.make',
    face: 'page',
    method: 'POST',
    path: '/e/:id/link',
    rights: 'customer',
    summary: 'Make a private link to come back by.',
    body: 'form',
    answers: { 200: 'other' },
    rate: { name: 'link', perMinute: 60 },
    load,
    act: async (call) => {
      const desk = openDesk(call.loaded)
      const { writes, ...made } = await customerLink(call, desk.id, 'come back')
      return { ...leavePage(call, desk, made), writes }
    },
  }),
  route({
    id: 'page.range',
    face: 'page',
    method: 'GET',
    path: '/e/:id/range',
    rights: 'customer',
    summary: 'The range for what has been told so far.',
    answers: { 200: 'other' },
    rate: { name: 'estimate', perMinute: 120 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      return firstDone(desk) ? range(call, desk) : seeOther(paths.conversation(desk.id))
    },
  }),
  route({
    id: 'page.submit',
    face: 'page',
    method: 'POST',
    path: '/e/:id/submission',
    rights: 'customer',
    summary: 'Send the enquiry to the studio.',
    body: 'form',
    answers: { 200: 'other' },
    again: true,
    rate: { name: 'submit', perMinute: 120 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      if (desk.docket.reference !== null) return seeOther(paths.range(desk.id))
      return orAgain(
        async () => {
          if (formOf(call).get('consent') === null)
            throw invalid([{ pointer: '/consent', code: 'ERR_CONSENT' }])
          if (desk.replayed.needed.length > 0)
            return seeOther(paths.question(desk.id, desk.replayed.needed[0] ?? ''))
          const sent = await submit(call, desk)
          return seeOther(`/e/${desk.id}/sent`, { writes: sent.writes })
        },
        (problem) => range(call, desk, fieldErrors(call, problem), 422),
      )
    },
  }),
  route({
    id: 'page.sent',
    face: 'page',
    method: 'GET',
    path: '/e/:id/sent',
    rights: 'customer',
    summary: 'The enquiry has arrived; what happens next.',
    answers: { 200: 'other' },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const { reference } = desk.docket
      if (reference === null) return seeOther(paths.conversation(desk.id))
      return page(
        <SentPage
          frame={frameOf(call, { home: paths.start, who: reference, reference })}
          id={desk.id}
          reference={reference}
          once={onceOf(call)}
        />,
      )
    },
  }),
]

const leavePage = (call: Any, desk: Desk, made?: MadeLink) =>
  page(
    <LeavePage
      frame={frameOf(call, { home: paths.start })}
      id={desk.id}
      once={onceOf(call)}
      {...(made ? { made } : {})}
    />,
  )
