import { LeavePage } from '../../pages/intake/leave-page'
import { SentPage } from '../../pages/intake/sent-page'
import { paths } from '../../pages/paths'
import { openDesk } from '../acts/desk'
import { submit } from '../acts/submit'
import { invalid } from '../http/problem'
import { type Route, route } from '../route'
import { firstDone, load, privateLink, range } from './conversation-render'
import { fieldErrors, formOf, frameOf, orAgain, page, seeOther } from './page'

export const sendingRoutes: readonly Route[] = [
  route({
    id: 'page.leave',
    face: 'page',
    method: 'GET',
    path: '/e/:id/leave',
    rights: 'customer',
    summary: 'A private link to come back by.',
    answers: { 200: 'other' },
    rate: { name: 'link', perMinute: 60 },
    load,
    act: async (call) => {
      const desk = openDesk(call.loaded)
      const { link, qrSvg, writes } = await privateLink(call, desk.id, 'come back')
      const shown = page(
        <LeavePage
          frame={frameOf(call, { home: paths.start })}
          id={desk.id}
          link={link}
          qrSvg={qrSvg}
        />,
      )
      return { ...shown, writes }
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
            throw invalid([{ pointer: '/consent', code: 'ERR_REQUIRED' }])
          if (desk.replayed.needed.length > 0)
            return seeOther(paths.question(desk.id, desk.replayed.needed[0] ?? ''))
          const sent = await submit(call, desk, desk.head?.doubtful ?? false)
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
    rate: { name: 'link', perMinute: 60 },
    load,
    act: async (call) => {
      const desk = openDesk(call.loaded)
      const { reference } = desk.docket
      if (reference === null) return seeOther(paths.conversation(desk.id))
      const { link, qrSvg, writes } = await privateLink(call, desk.id, 'sent')
      const shown = page(
        <SentPage
          frame={frameOf(call, { home: paths.start, who: reference, reference })}
          id={desk.id}
          reference={reference}
          link={link}
          qrSvg={qrSvg}
        />,
      )
      return { ...shown, writes }
    },
  }),
]
