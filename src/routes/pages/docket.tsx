import { paths } from '../../pages/paths'
import { selectLinesOfLast } from '../../store/lines'
import { type Desk, openDesk } from '../acts/desk'
import { revise, revisionOf } from '../acts/revising'
import { invalid, Problem } from '../http/problem'
import { type Outcome, type Route, route } from '../route'
import { adjustmentsOf } from './adjust-form'
import { back, docketPage, inForce, load } from './docket-render'
import { merged, sentPage, stepNames, tried, withOwn } from './docket-revise'
import { lastVisit } from './last-visit'
import { optionsOf } from './options-form'
import { fieldErrors, formOf, keptOf, orAgain, seeOther, textOf, withRev } from './page'

export const docketPageRoutes: readonly Route[] = [
  route({
    id: 'page.docket',
    face: 'page',
    method: 'GET',
    path: '/studio/d/:id',
    rights: 'bench',
    summary: 'One docket with everything behind its figures.',
    answers: { 200: 'other' },
    load: (input) => ({ ...load(input), last: selectLinesOfLast(input.params.id ?? '') }),
    act: (call) => {
      const desk = openDesk(call.loaded)
      const last = lastVisit(call, call.loaded.last)
      return docketPage(call, desk, inForce(desk), { last })
    },
  }),
  route({
    id: 'page.docket.photo',
    face: 'page',
    method: 'GET',
    path: '/studio/d/:id/photos/:photo',
    rights: 'bench',
    summary: 'A picture of a docket.',
    answers: { 200: 'other' },
    load,
    act: async (call) => {
      const photo = openDesk(call.loaded).photos.find((p) => p.id === call.params.photo)
      const body = photo ? await call.deps.photos.get(photo.key) : null
      if (!photo || body === null) throw new Problem('unknown')
      return { status: 200, bytes: { body, mime: photo.mime } }
    },
  }),
  route({
    id: 'page.revision',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/revisions',
    rights: 'owner',
    summary: 'Try adjustments, or save them as the next revision.',
    body: 'form',
    answers: { 303: null, 200: 'other' },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      const read = adjustmentsOf(
        form,
        call.studio.profile.currency,
        stepNames(desk),
        call.studio.profile.ownSteps,
      )
      const posted = (state: Desk) => withOwn(inForce(state), read.adjustments)
      const all = posted(desk)
      const again = (problem: Problem): Outcome =>
        problem.code === 'stale'
          ? merged(call, desk, posted, problem)
          : docketPage(
              call,
              desk,
              inForce(desk),
              { errors: fieldErrors(call, problem), kept: keptOf(form) },
              422,
            )
      return orAgain(
        async () => {
          if (read.faults.length > 0) throw invalid(read.faults)
          const choice = optionsOf(form)
          if (form.get('act') === 'try') return tried(call, desk, all, read.deposit, choice)
          const seen = withRev(call, form)
          const given = {
            adjustments: all,
            message: textOf(form, 'message', 2000),
            deposit: read.deposit,
            validDays: read.validDays,
            ...choice,
          }
          const done = await revise(seen, desk, given)
          if (form.get('act') !== 'send')
            return seeOther(`${paths.docket(desk.id)}#revisions`, { writes: done.writes })
          return sentPage(call, { ...desk, lines: done.lines, docket: done.docket }, done.writes)
        },
        again,
        ['invalid', 'stale'],
      )
    },
  }),
  route({
    id: 'page.revision.send',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/revisions/:n/sending',
    rights: 'owner',
    summary: 'Send a revision; shows the link and the message to paste.',
    body: 'form',
    answers: { 200: 'other' },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const revision = revisionOf(desk.docket, call.params.n ?? '')
      return orAgain(
        () => sentPage(withRev(call, formOf(call)), desk, [], revision),
        (problem) => back(call, problem, desk),
        ['stale'],
      )
    },
  }),
]
