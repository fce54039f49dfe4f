import { paths } from '../../pages/paths'
import type { MessageView } from '../../pages/studio/docket-view'
import { openDesk } from '../acts/desk'
import { revise, revisionOf, send } from '../acts/revising'
import { invalid, Problem } from '../http/problem'
import { type Outcome, type Route, route } from '../route'
import { adjustmentsOf } from './adjust-form'
import { docketPage, inForce, load, ownStep } from './docket-render'
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
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      return docketPage(call, desk, inForce(desk))
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
    answers: { 303: null },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      const step = ownStep(desk)
      const read = adjustmentsOf(form, call.studio.profile.currency, () => step)
      const kept = inForce(desk).filter(
        (a) =>
          a.kind === 'add' &&
          !read.adjustments.some((b) => b.kind === 'remove' && b.step === a.step),
      )
      const all = [...kept, ...read.adjustments.filter((a) => !kept.includes(a))]
      const again = (problem: Problem): Outcome =>
        docketPage(
          call,
          desk,
          inForce(desk),
          { errors: fieldErrors(call, problem), kept: keptOf(form) },
          422,
        )
      return orAgain(async () => {
        if (read.faults.length > 0) throw invalid(read.faults)
        if (form.get('act') === 'try')
          return docketPage(call, desk, all, { trial: true, kept: keptOf(form) })
        const done = await revise(withRev(call, form), desk, {
          adjustments: all,
          message: textOf(form, 'message')?.slice(0, 2000),
        })
        return seeOther(`${paths.docket(desk.id)}#revisions`, { writes: done.writes })
      }, again)
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
    act: async (call) => {
      const desk = openDesk(call.loaded)
      const revision = revisionOf(desk.docket, call.params.n ?? '')
      const done = await send(withRev(call, formOf(call)), desk, revision)
      const p = desk.people[0]
      const message: MessageView = {
        text: done.message,
        subject: call.studio.words.say('message.subject', {
          reference: desk.docket.reference ?? '',
          studio: call.studio.profile.name,
        }),
        ...(p?.email ? { email: p.email } : {}),
        ...(p?.phone ? { phone: p.phone } : {}),
      }
      const now = { ...desk, docket: done.docket }
      return { ...docketPage(call, now, inForce(now), { message }), writes: done.writes }
    },
  }),
]
