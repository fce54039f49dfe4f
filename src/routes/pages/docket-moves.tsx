import { STATES } from '../../docket/states'
import { paths } from '../../pages/paths'
import { checkMatch, openDesk } from '../acts/desk'
import { dateJob, move } from '../acts/moving'
import { eraseMine } from '../acts/my-data'
import { reply } from '../acts/replying'
import { invalid } from '../http/problem'
import { type Route, route } from '../route'
import { back, load } from './docket-render'
import { formOf, orAgain, seeOther, textOf, withRev } from './page'

export const docketMoveRoutes: readonly Route[] = [
  route({
    id: 'page.docket.date',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/date',
    rights: 'owner',
    summary: 'Set the day the work begins.',
    body: 'form',
    answers: { 303: null },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      return orAgain(
        () => {
          const start = textOf(form, 'start') ?? ''
          if (!/^\d{4}-\d{2}-\d{2}$/.test(start))
            throw invalid([{ pointer: '/start', code: 'ERR_DATE' }])
          const at = /^(\d{2}):(\d{2})$/.exec(form.get('startTime') ?? '')
          const startMinute = at ? Number(at[1]) * 60 + Number(at[2]) : undefined
          const done = dateJob(withRev(call, form), desk, { start, startMinute })
          return seeOther(paths.docket(desk.id), { writes: done.writes })
        },
        (problem) => back(call, problem, desk),
      )
    },
  }),
  route({
    id: 'page.docket.move',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/move',
    rights: 'bench',
    summary: 'Move a docket by hand.',
    body: 'form',
    answers: { 303: null },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      const to = STATES.find((s) => s === form.get('to'))
      return orAgain(
        () => {
          if (!to) throw invalid([{ pointer: '/to', code: 'ERR_VALUE' }])
          const done = move(withRev(call, form), desk, to, textOf(form, 'why')?.slice(0, 1000))
          return seeOther(paths.docket(desk.id), { writes: done.writes })
        },
        (problem) => back(call, problem, desk),
      )
    },
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
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      return orAgain(
        () => {
          const text = textOf(form, 'text')?.slice(0, 2000)
          if (text === undefined) throw invalid([{ pointer: '/text', code: 'ERR_REQUIRED' }])
          const { writes } = reply(withRev(call, form), desk, text)
          return seeOther(paths.docket(desk.id), { writes })
        },
        (problem) => back(call, problem, desk),
      )
    },
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
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      checkMatch(withRev(call, formOf(call)), desk)
      return seeOther(paths.docket(desk.id), eraseMine(call, desk))
    },
  }),
]
