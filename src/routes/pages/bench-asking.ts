import { paths } from '../../pages/paths'
import { decideReIssue, reIssue } from '../acts/re-issuing'
import { type Route, route } from '../route'
import { benchForm, load, money } from './bench-render'
import { seeOther, textOf } from './page'
import { reIssueWord } from './re-issue-form'

/** Questions the bench puts to the customer, and answers taken down on the phone. */
export const benchAskingRoutes: readonly Route[] = [
  route({
    id: 'page.bench.re-issue',
    face: 'page',
    method: 'POST',
    path: '/bench/:id/re-issues',
    rights: 'bench',
    summary: 'Ask the customer about a smaller result before polishing.',
    body: 'form',
    answers: { 303: null },
    again: true,
    load,
    act: benchForm((call, desk, form) => {
      const { currency } = call.studio.profile
      const given = {
        text: textOf(form, 'text', 2000),
        net: money(form.get('net'), 'net', currency),
      }
      const done = reIssue(call, desk, given, call.loaded.estimates)
      return seeOther(`${paths.bench(desk.id)}#smaller-result`, { writes: done.writes })
    }),
  }),
  route({
    id: 'page.bench.re-issue.phone',
    face: 'page',
    method: 'POST',
    path: '/bench/:id/re-issues/:issue/decision',
    rights: 'bench',
    summary: 'Take down what the customer said on the phone about a smaller result.',
    body: 'form',
    answers: { 303: null },
    again: true,
    load,
    act: benchForm((call, desk, form) => {
      const word = reIssueWord(form)
      const done = decideReIssue(call, desk, call.params.issue ?? '', word, 'phone')
      return seeOther(`${paths.bench(desk.id)}#smaller-result`, { writes: done.writes })
    }),
  }),
]
