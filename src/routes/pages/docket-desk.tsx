import { formValue } from '../../intake/form-value'
import { paths } from '../../pages/paths'
import { CorrectPage } from '../../pages/studio/correct-page'
import { answerText } from '../../words/answer-text'
import { askAgain } from '../acts/asking-again'
import { correctAnswer, mayCorrect } from '../acts/correcting'
import { type Desk, openDesk } from '../acts/desk'
import { questionOf } from '../acts/enquiry'
import { answerOwn } from '../acts/own-questions'
import { notNow } from '../acts/revising'
import { questionView } from '../acts/views'
import { invalid, type Problem } from '../http/problem'
import { type Route, route } from '../route'
import { keptAnswer } from './conversation-view'
import { back, docketForm, docketPage, inForce, load, messageView, withText } from './docket-render'
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

const correctPage = (call: Any, desk: Desk, problem?: Problem) => {
  const { words } = call.studio
  const q = questionOf(call.params.question ?? '')
  const answer = desk.answers[q.id]
  const kept = problem ? keptOf(formOf(call)) : keptAnswer(q, answer, words)
  const why = problem ? formOf(call).get('why') : null
  return page(
    <CorrectPage
      frame={frameOf(call, desk.docket.reference ? { who: desk.docket.reference } : {})}
      id={desk.id}
      rev={desk.docket.rev}
      question={questionView(q, words)}
      now={answer ? answerText(q, answer, words) : words.say('answer.unsure')}
      once={onceOf(call)}
      {...(kept ? { kept } : {})}
      {...(why ? { why } : {})}
      {...(problem ? { errors: fieldErrors(call, problem) } : {})}
    />,
    problem ? 422 : 200,
  )
}

export const docketDeskRoutes: readonly Route[] = [
  route({
    id: 'page.docket.correct',
    face: 'page',
    method: 'GET',
    path: '/studio/d/:id/answers/:question',
    rights: 'owner',
    summary: 'Change an answer for the customer.',
    answers: { 200: 'other' },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      if (!mayCorrect(desk.docket.state)) throw notNow(desk.docket, [])
      return correctPage(call, desk)
    },
  }),
  route({
    id: 'page.docket.correct.save',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/answers/:question',
    rights: 'owner',
    summary: 'Change an answer for the customer, with the reason they will read.',
    body: 'form',
    answers: { 303: null },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      const q = questionOf(call.params.question ?? '')
      return orAgain(
        () => {
          const posted = { get: form.get, getAll: form.all }
          const given = formValue(q, posted, call.studio.engine.exponent)
          if (given === undefined) throw invalid([{ pointer: '/value', code: 'ERR_REQUIRED' }])
          const done = correctAnswer(withRev(call, form), desk, q, given, textOf(form, 'why', 500))
          return seeOther(`${paths.docket(desk.id)}#facts`, { writes: done.writes })
        },
        (problem) =>
          problem.code === 'stale' ? back(call, problem, desk) : correctPage(call, desk, problem),
        ['invalid', 'stale'],
      )
    },
  }),
  route({
    id: 'page.docket.ask',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/asking',
    rights: 'owner',
    summary: 'Ask the customer a question again; shows the message to send.',
    body: 'form',
    answers: { 200: 'other' },
    load,
    act: docketForm(async (call, desk, form) => {
      const question = form.get('question') ?? ''
      const text = textOf(form, 'text', 500)
      const done = await askAgain(call, desk, question, text)
      const ref = done.docket.askedAgain.at(-1)?.text
      const now = withText({ ...desk, docket: done.docket }, ref, text)
      const message = messageView(call, desk, done.message)
      return { ...docketPage(call, now, inForce(now), { message }), writes: done.writes }
    }),
  }),
  route({
    id: 'page.docket.own',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/own',
    rights: 'owner',
    summary: 'Keep answers to the studio’s own questions.',
    body: 'form',
    answers: { 303: null },
    load,
    act: docketForm((call, desk, form) => {
      const given = Object.fromEntries(
        form.entries.flatMap(([name, value]) =>
          name.startsWith('own:') ? [[name.slice(4), value]] : [],
        ),
      )
      const done = answerOwn(call, desk, given, '/own:')
      return seeOther(`${paths.docket(desk.id)}#own`, { writes: done.writes })
    }),
  }),
]
