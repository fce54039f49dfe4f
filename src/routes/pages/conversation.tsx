import { formValue } from '../../intake/form-value'
import { paths } from '../../pages/paths'
import { openDesk } from '../acts/desk'
import { doubtsOf } from '../acts/doubting'
import { answerQuestion, questionOf } from '../acts/enquiry'
import { openAgain } from '../acts/open-again'
import { invalid } from '../http/problem'
import { type Route, route } from '../route'
import { afterSending, conversation, load, yearOf } from './conversation-render'
import { fieldErrors, formOf, keptOf, orAgain, seeOther } from './page'

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
      const question = questionOf(call.params.question ?? '')
      if (on !== null) {
        if (!openAgain(desk).includes(question.id)) return seeOther(on)
        return conversation(call, desk, { question, changing: true })
      }
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
        async () => {
          const skipped = question.optional && form.get('skip') !== null
          const given = skipped
            ? { value: null }
            : formValue(question, { get: form.get, getAll: form.all }, call.studio.engine.exponent)
          if (given === undefined) throw invalid([{ pointer: '/value', code: 'ERR_REQUIRED' }])
          const doubts = question.kind === 'contact' ? await doubtsOf(desk, form, call.now) : []
          const done = answerQuestion(call, desk, question, given, yearOf(call.now), doubts)
          return seeOther(paths.conversation(desk.id), { writes: done.writes })
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
]
