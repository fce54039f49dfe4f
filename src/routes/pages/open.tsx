import * as z from 'zod'
import type { Answer } from '../../intake/answers'
import { formValue } from '../../intake/form-value'
import type { Question } from '../../intake/question'
import type { Kept } from '../../pages/frame'
import { paths } from '../../pages/paths'
import { ageWords } from '../../pages/studio/list-page'
import { type KnownCar, OpenPage } from '../../pages/studio/open-page'
import { type ListedHead, listHeads, selectListed } from '../../store/heads'
import { type Desk, deskLoad, openDesk } from '../acts/desk'
import { accept, questionOf, yearFault } from '../acts/enquiry'
import { fromLastTime, openShort } from '../acts/opening'
import { questionView } from '../acts/views'
import { type Fault, invalid, Problem, tooLong } from '../http/problem'
import { type Form, type Route, route } from '../route'
import { keptAnswer } from './conversation-view'
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
} from './page'
import { customerCookie } from './start'

const maybe = z.exactOptional
/** What one asks at the counter; the rest is unknown until somebody says it. */
const SHORT = [
  'body',
  'size',
  'year',
  'colour',
  'services',
  'cabin-state',
  'wish',
  'dangers',
  'deadline',
  'best-thing',
]
const MOST_FOUND = 8
const MOST_PLATE = 20

const shortQuestions = (): readonly Question<unknown>[] => SHORT.map(questionOf)

/** What the last visit fills in. */
const keptLike = (call: Any, desk: Desk): Kept => {
  const kept: Record<string, readonly string[]> = {}
  const last = fromLastTime(desk.answers)
  for (const q of shortQuestions()) {
    for (const [name, values] of Object.entries(keptAnswer(q, last[q.id], call.studio.words) ?? {}))
      kept[`${q.id}.${name}`] = values
    const a = last[q.id]
    if (a && 'value' in a && Array.isArray(a.value) && a.value.length === 0)
      kept[`${q.id}.none`] = ['1']
  }
  const p = desk.people[0]
  if (p?.name) kept['contact.name'] = [p.name]
  if (p?.phone) kept['contact.phone'] = [p.phone]
  if (p?.email) kept['contact.email'] = [p.email]
  if (p?.plate) kept.plate = [p.plate]
  return kept
}

const known = (call: Any, h: ListedHead): KnownCar => ({
  id: h.docket,
  title: h.title,
  person: h.personName,
  plate: h.plate,
  reference: h.reference,
  age: ageWords(call.studio.words, Math.floor((call.now - (h.receivedAt ?? h.createdAt)) / 60_000)),
})

/** The short form as answers; what was left empty was not said. Throws 422 with every fault. */
const answersOf = (call: Any, form: Form): Record<string, Answer> => {
  const answers: Record<string, Answer> = {}
  const faults: Fault[] = []
  for (const q of [...shortQuestions(), questionOf('contact')]) {
    const none = q.kind === 'multi' && form.get(`${q.id}.none`) !== null
    const own = {
      get: (name: string) => form.get(`${q.id}.${name}`),
      getAll: (name: string) => form.all(`${q.id}.${name}`),
    }
    const given = formValue(q, own, call.studio.engine.exponent)
    const empty =
      given === undefined ||
      ('value' in given &&
        (given.value === null || (Array.isArray(given.value) && given.value.length === 0)))
    if (given === undefined || (empty && !none)) {
      if (q.id === 'body' || q.id === 'services' || q.id === 'contact')
        faults.push({
          pointer: `/${q.id}.${q.id === 'contact' ? 'name' : 'value'}`,
          code: 'ERR_REQUIRED',
        })
      continue
    }
    try {
      const answer = accept(q, given)
      yearFault(q, answer, new Date(call.now).getUTCFullYear())
      answers[q.id] = answer
    } catch (error) {
      if (!(error instanceof Problem)) throw error
      for (const f of error.faults)
        faults.push({ ...f, pointer: `/${q.id}.${f.pointer.split('/').at(-1) ?? 'value'}` })
    }
  }
  const plate = form.get('plate')?.trim() ?? ''
  if (plate.length > MOST_PLATE) faults.push(tooLong('/plate', plate, MOST_PLATE))
  if (form.get('consent') === null) faults.push({ pointer: '/consent', code: 'ERR_CONSENT' })
  if (faults.length > 0) throw invalid(faults)
  return answers
}

type Shown = {
  readonly like?: ListedHead | undefined
  readonly found?: readonly ListedHead[]
  readonly q?: string
}

const openPage = (call: Any, shown: Shown, kept: Kept, problem?: Problem) =>
  page(
    <OpenPage
      frame={frameOf(call)}
      once={onceOf(call)}
      found={(shown.found ?? []).slice(0, MOST_FOUND).map((h) => known(call, h))}
      questions={shortQuestions().map((q) => questionView(q, call.studio.words))}
      kept={kept}
      {...(shown.q ? { q: shown.q } : {})}
      {...(shown.like ? { like: known(call, shown.like) } : {})}
      {...(problem ? { errors: fieldErrors(call, problem) } : {})}
    />,
    problem ? 422 : 200,
  )

export const openRoutes: readonly Route[] = [
  route({
    id: 'page.docket.new',
    face: 'page',
    method: 'GET',
    path: '/studio/new',
    rights: 'owner',
    summary: 'Open a docket oneself: find the car’s last visit, or fill in the short form.',
    query: z.object({ q: maybe(z.string().max(100)), like: maybe(z.string().max(64)) }),
    answers: { 200: 'other' },
    load: ({ query }) => ({
      ...deskLoad(query.like ?? ''),
      listed: selectListed(query.like ?? ''),
      found: listHeads({ limit: query.q?.trim() ? MOST_FOUND : 0, q: query.q?.trim() || '-' }),
    }),
    act: (call) => {
      const { query, loaded } = call
      if (query.like === undefined)
        return openPage(call, { found: loaded.found, ...(query.q ? { q: query.q } : {}) }, {})
      const desk = openDesk(loaded)
      return openPage(call, { like: loaded.listed[0] }, keptLike(call, desk))
    },
  }),
  route({
    id: 'page.docket.short',
    face: 'page',
    method: 'POST',
    path: '/studio/new',
    rights: 'owner',
    summary: 'Open a docket from the short form; what was not said is unknown.',
    body: 'form',
    answers: { 303: null },
    load: ({ body }) => {
      const like = (body as Form | undefined)?.get('like') ?? ''
      return { ...deskLoad(like), listed: selectListed(like) }
    },
    act: (call) => {
      const form = formOf(call)
      const like = form.get('like') ? openDesk(call.loaded) : undefined
      return orAgain(
        async () => {
          const answers = answersOf(call, form)
          const done = await openShort(call, {
            answers,
            plate: textOf(form, 'plate', MOST_PLATE),
            consent: true,
            ...(like ? { like } : {}),
          })
          if (done.sent) return seeOther(paths.docket(done.id), { writes: done.writes })
          return seeOther(paths.conversation(done.id), {
            writes: done.writes,
            cookies: [customerCookie(call, done.id, done.key)],
          })
        },
        (problem) => openPage(call, { like: call.loaded.listed[0] }, keptOf(form), problem),
      )
    },
  }),
]
