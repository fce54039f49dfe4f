import { renderSVG } from 'uqr'
import { formValue } from '../../intake/form-value'
import type { Question } from '../../intake/question'
import type { FieldError, Kept } from '../../pages/frame'
import { ConversationPage } from '../../pages/intake/conversation-page'
import { LeavePage } from '../../pages/intake/leave-page'
import { RangePage } from '../../pages/intake/range-page'
import { SentPage } from '../../pages/intake/sent-page'
import { paths } from '../../pages/paths'
import { estimate } from '../../quote/estimate'
import { insertAccess } from '../../store/accesses'
import { type Desk, deskLoad, openDesk } from '../acts/desk'
import { answerQuestion, CUSTOMER_KEY_MS, questionOf } from '../acts/enquiry'
import { deskInput } from '../acts/estimating'
import { addPhoto, removePhoto } from '../acts/photo'
import { submit } from '../acts/submit'
import { questionView } from '../acts/views'
import { newKey, sha256 } from '../http/keys'
import { invalid, Problem } from '../http/problem'
import { type Route, route } from '../route'
import { answeredViews, keptAnswer, photoViews, setAsideTexts } from './conversation-view'
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
} from './page'

const load = ({ params }: { readonly params: Readonly<Record<string, string>> }) =>
  deskLoad(params.id ?? '')

/** A field people do not see; whoever fills it, or is done within seconds, is looked at apart. */
const TRAP = { field: 'fax', timeField: 'made' } as const
const HURRIED_MS = 6000

const yearOf = (now: number): number => new Date(now).getUTCFullYear()

const firstDone = (desk: Desk): boolean =>
  desk.replayed.needed.every((id) => questionOf(id).stage !== 'first')

type Shown = {
  readonly question?: Question<unknown> | null
  readonly changing?: boolean
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
  readonly status?: number
}

const conversation = (call: Any, desk: Desk, shown: Shown = {}) => {
  const { words } = call.studio
  const question = shown.question === undefined ? desk.replayed.current : shown.question
  const kept =
    shown.kept ?? (question ? keptAnswer(question, desk.answers[question.id], words) : undefined)
  return page(
    <ConversationPage
      frame={frameOf(call, { home: paths.start })}
      id={desk.id}
      answered={answeredViews(desk, words)}
      question={question === null ? null : questionView(question, words)}
      changing={shown.changing ?? false}
      progress={desk.replayed.progress}
      once={onceOf(call)}
      canRange={firstDone(desk)}
      photos={photoViews(desk, words)}
      setAside={setAsideTexts(desk, words)}
      {...(question?.kind === 'contact'
        ? { trap: { ...TRAP, time: String(desk.docket.openedAt) } }
        : {})}
      {...(shown.errors ? { errors: shown.errors } : {})}
      {...(kept ? { kept } : {})}
    />,
    shown.status ?? 200,
  )
}

const privateLink = async (call: Any, id: string, label: string) => {
  const key = newKey(call.deps.random)
  const link = `${call.origin}/l/${id}/${key}`
  const access = insertAccess({
    hash: await sha256(key),
    kind: 'customer',
    docket: id,
    label,
    createdAt: call.now,
    expiresAt: call.now + CUSTOMER_KEY_MS,
    usedAt: null,
    revokedAt: null,
    parent: null,
  })
  return { link, qrSvg: renderSVG(link, { border: 2 }), writes: [access] }
}

const range = (call: Any, desk: Desk, errors: readonly FieldError[] = [], status = 200) => {
  const made = estimate(deskInput(call.studio, call.now, desk))
  const needed = desk.replayed.needed[0]
  const { reference } = desk.docket
  return page(
    <RangePage
      frame={frameOf(call, {
        home: paths.start,
        ...(reference ? { reference, who: reference } : {}),
      })}
      id={desk.id}
      estimate={made}
      shows={call.studio.profile.shows}
      pricesWithTax={call.studio.profile.pricesWithTax}
      once={onceOf(call)}
      errors={errors}
      {...(reference ? { sent: { reference } } : {})}
      {...(needed && !reference ? { needed: { href: paths.question(desk.id, needed) } } : {})}
    />,
    status,
  )
}

const afterSending = (desk: Desk): string | null => {
  const { state } = desk.docket
  if (state === 'answering') return null
  if (desk.docket.handedOver) return paths.record(desk.id)
  return desk.docket.sent ? paths.quote(desk.id) : paths.range(desk.id)
}

export const conversationRoutes: readonly Route[] = [
  route({
    id: 'page.conversation',
    face: 'page',
    method: 'GET',
    path: '/e/:id',
    rights: 'customer',
    summary: 'The conversation, or where things stand once it was sent.',
    answers: { 200: 'other' },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const on = afterSending(desk)
      return on === null ? conversation(call, desk) : seeOther(on)
    },
  }),
  route({
    id: 'page.question',
    face: 'page',
    method: 'GET',
    path: '/e/:id/q/:question',
    rights: 'customer',
    summary: 'One question, to answer it or to change its answer.',
    answers: { 200: 'other' },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const on = afterSending(desk)
      if (on !== null) return seeOther(on)
      const question = questionOf(call.params.question ?? '')
      const { current, answered, missing } = desk.replayed
      const asked =
        missing.includes(question.id) || answered.some((a) => a.question.id === question.id)
      if (!asked) return seeOther(paths.conversation(desk.id))
      return conversation(call, desk, { question, changing: question.id !== current?.id })
    },
  }),
  route({
    id: 'page.answer',
    face: 'page',
    method: 'POST',
    path: '/e/:id/answers/:question',
    rights: 'customer',
    summary: 'Answer a question.',
    body: 'form',
    answers: { 303: null },
    again: true,
    rate: { name: 'answer', perMinute: 1200 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      const question = questionOf(call.params.question ?? '')
      return orAgain(
        () => {
          const skipped = question.optional && form.get('skip') !== null
          const given = skipped
            ? { value: null }
            : formValue(question, { get: form.get, getAll: form.all }, call.studio.engine.exponent)
          if (given === undefined) throw invalid([{ pointer: '/value', code: 'ERR_REQUIRED' }])
          const done = answerQuestion(call, desk, question, given, yearOf(call.now))
          const hurried =
            question.kind === 'contact' &&
            (Boolean(form.get(TRAP.field)) || call.now - desk.docket.openedAt < HURRIED_MS)
          const writes = hurried ? [...done.writes, doubt(desk.id)] : done.writes
          return seeOther(paths.conversation(desk.id), { writes })
        },
        (problem) =>
          conversation(call, desk, {
            question,
            changing: question.id !== desk.replayed.current?.id,
            errors: fieldErrors(call, problem),
            kept: keptOf(form),
            status: 422,
          }),
      )
    },
  }),
  route({
    id: 'page.photo.add',
    face: 'page',
    method: 'POST',
    path: '/e/:id/photos',
    rights: 'customer',
    summary: 'Add a picture.',
    body: 'multipart',
    answers: { 303: null },
    again: true,
    rate: { name: 'photo', perMinute: 120 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      return orAgain(
        async () => {
          const done = await addPhoto(call, desk, formOf(call))
          return seeOther(paths.question(desk.id, 'photos'), {
            writes: done.writes,
            before: done.before,
            undo: done.undo,
          })
        },
        (problem) =>
          conversation(call, desk, {
            question: questionOf('photos'),
            errors: fieldErrors(call, problem),
            status: 422,
          }),
      )
    },
  }),
  route({
    id: 'page.photo.read',
    face: 'page',
    method: 'GET',
    path: '/e/:id/photos/:photo',
    rights: 'customer',
    summary: 'One of the pictures.',
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
    id: 'page.photo.remove',
    face: 'page',
    method: 'POST',
    path: '/e/:id/photos/:photo/removal',
    rights: 'customer',
    summary: 'Take a picture back.',
    body: 'form',
    answers: { 303: null },
    again: true,
    rate: { name: 'photo', perMinute: 120 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const done = removePhoto(call, desk, call.params.photo ?? '')
      return seeOther(paths.question(desk.id, 'photos'), { writes: done.writes, after: done.after })
    },
  }),
  route({
    id: 'page.leave',
    face: 'page',
    method: 'GET',
    path: '/e/:id/leave',
    rights: 'customer',
    summary: 'A private link to come back by.',
    answers: { 200: 'other' },
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

/** Marks a docket to be looked at apart; it stays on the list and nothing is refused. */
const doubt = (docket: string) => ({
  sql: 'update head set doubtful = 1 where docket = ?',
  args: [docket],
})
