import { UNANSWERED } from '../../docket/kinds'
import { paths } from '../../pages/paths'
import { estimateBehind } from '../acts/agreed'
import { decide, decideExtra } from '../acts/deciding'
import { openDesk } from '../acts/desk'
import { decideReIssue } from '../acts/re-issuing'
import { invalid } from '../http/problem'
import { type Route, route } from '../route'
import { money } from './bench-render'
import { fieldErrors, formOf, keptOf, orAgain, seeOther, textOf, typedIn } from './page'
import { AGREED, agreedPage, load, quotePage } from './quote-render'
import { reIssueWord } from './re-issue-form'

export const quotePageRoutes: readonly Route[] = [
  route({
    id: 'page.quote',
    face: 'page',
    method: 'GET',
    path: '/e/:id/quote',
    rights: 'customer',
    summary: 'The quote, or what was agreed.',
    answers: { 200: 'other' },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      if (desk.docket.handedOver) return seeOther(paths.record(desk.id))
      if (AGREED.has(desk.docket.state)) return agreedPage(call, desk)
      const { sent } = desk.docket
      const behind = estimateBehind(sent, call.loaded.estimates)
      if (!sent || !behind) return seeOther(paths.range(desk.id))
      return quotePage(call, desk, sent, call.loaded.estimates, behind)
    },
  }),
  route({
    id: 'page.decide',
    face: 'page',
    method: 'POST',
    path: '/e/:id/quote/decision',
    rights: 'customer',
    summary: 'Accept, ask about or decline the quote.',
    body: 'form',
    answers: { 303: null },
    again: true,
    rate: { name: 'decide', perMinute: 120 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      const { sent } = desk.docket
      const behind = estimateBehind(sent, call.loaded.estimates)
      if (!sent || !behind) return seeOther(paths.range(desk.id))
      return orAgain(
        () => {
          const decision = form.get('decision')
          if (decision !== 'accept' && decision !== 'ask' && decision !== 'decline')
            throw invalid([{ pointer: '/decision', code: 'ERR_REQUIRED' }])
          const done = decide(
            call,
            desk,
            {
              decision,
              revision: Number(form.get('revision') ?? 0),
              name: textOf(form, 'name', 200),
              acknowledged: form.all('acknowledged[]'),
              text: textOf(form, 'text', 2000),
              option: typedIn(form, 'option'),
              extrasLimit: money(form.get('extrasLimit'), 'extrasLimit', sent.offer.currency) ?? 0,
              unanswered: UNANSWERED.find((u) => u === form.get('unanswered')),
              decides: textOf(form, 'decides', 200),
            },
            call.loaded.estimates,
          )
          return seeOther(paths.quote(desk.id), { writes: done.writes })
        },
        (problem) =>
          AGREED.has(desk.docket.state)
            ? agreedPage(call, desk, problem)
            : quotePage(call, desk, sent, call.loaded.estimates, behind, {
                errors: fieldErrors(call, problem),
                kept: keptOf(form),
                status: 422,
              }),
      )
    },
  }),
  route({
    id: 'page.re-issue.decide',
    face: 'page',
    method: 'POST',
    path: '/e/:id/re-issues/:issue/decision',
    rights: 'customer',
    summary: 'Say whether to go on with a smaller result.',
    body: 'form',
    answers: { 303: null },
    again: true,
    rate: { name: 'decide', perMinute: 120 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      return orAgain(
        () => {
          const word = reIssueWord(formOf(call))
          const done = decideReIssue(call, desk, call.params.issue ?? '', word, 'link')
          return seeOther(paths.quote(desk.id), { writes: done.writes })
        },
        (problem) => agreedPage(call, desk, problem),
      )
    },
  }),
  route({
    id: 'page.extra.decide',
    face: 'page',
    method: 'POST',
    path: '/e/:id/extras/:extra/decision',
    rights: 'customer',
    summary: 'Agree to or refuse extra work.',
    body: 'form',
    answers: { 303: null },
    again: true,
    rate: { name: 'decide', perMinute: 120 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      const decision = form.get('decision') === 'agree' ? 'agree' : 'refuse'
      const name = textOf(form, 'name', 200) ?? desk.people[0]?.name ?? ''
      const done = decideExtra(call, desk, call.params.extra ?? '', { decision, name }, 'link')
      return seeOther(paths.quote(desk.id), { writes: done.writes })
    },
  }),
]
