import type { Adjustment } from '../../docket/kinds'
import { STATES, type State } from '../../docket/states'
import { paths } from '../../pages/paths'
import { DocketPage, type DocketPageProps } from '../../pages/studio/docket-page'
import type { MessageView } from '../../pages/studio/docket-view'
import { checkMatch, type Desk, deskLoad, openDesk } from '../acts/desk'
import { dateJob, move } from '../acts/moving'
import { eraseMine } from '../acts/my-data'
import { reply } from '../acts/replying'
import { revise, revisionOf, send } from '../acts/revising'
import { invalid, Problem } from '../http/problem'
import { type Outcome, type Route, route } from '../route'
import { adjustmentsOf } from './adjust-form'
import { docketView } from './docket-view'
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
  withRev,
} from './page'

const load = ({ params }: { readonly params: Readonly<Record<string, string>> }) =>
  deskLoad(params.id ?? '')

const SHEET = new Set<State>([
  'agreed',
  'dated',
  'on-bench',
  'held',
  'finished',
  'part-done',
  'uncollected',
  'come-back',
  'handed-over',
])

/** The studio's own work names stay the same from one revision to the next. */
const ownStep = (desk: Desk): string => {
  const used = new Set(
    desk.docket.revisions.flatMap((r) =>
      r.adjustments.flatMap((a) => (a.kind === 'add' ? [a.step] : [])),
    ),
  )
  let n = used.size + 1
  while (used.has(`own-${n}`)) n += 1
  return `own-${n}`
}

const inForce = (desk: Desk): readonly Adjustment[] =>
  desk.docket.revisions.at(-1)?.adjustments ?? []

const docketPage = (
  call: Any,
  desk: Desk,
  adjustments: readonly Adjustment[],
  more: Partial<Pick<DocketPageProps, 'errors' | 'kept' | 'trial' | 'message'>> = {},
  status = 200,
): Outcome => {
  const reference = desk.docket.reference
  return page(
    <DocketPage
      frame={frameOf(call, reference ? { who: reference, reference } : {})}
      docket={docketView(call, desk, adjustments)}
      once={onceOf(call)}
      {...(SHEET.has(desk.docket.state) ? { benchHref: paths.bench(desk.id) } : {})}
      {...more}
    />,
    status,
  )
}

const back = (call: Any, problem: Problem, desk: Desk): Outcome =>
  docketPage(
    call,
    desk,
    inForce(desk),
    { errors: fieldErrors(call, problem), kept: keptOf(formOf(call)) },
    422,
  )

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
      checkMatch(withRev(call, formOf(call)), desk.docket)
      return seeOther(paths.docket(desk.id), eraseMine(call, desk))
    },
  }),
]
