import * as z from 'zod'
import { askAgain } from '../acts/asking-again'
import { correctAnswer } from '../acts/correcting'
import { deskLoad, openDesk } from '../acts/desk'
import { questionOf } from '../acts/enquiry'
import { answerOwn } from '../acts/own-questions'
import { type Route, route } from '../route'
import { askedAnswer, stateAnswer } from './shapes'

const base = '/api/v1/dockets'
const maybe = z.exactOptional
type Params = { readonly params: Readonly<Record<string, string>> }
const load = ({ params }: Params) => deskLoad(params.id ?? '')
const stateOf = (docket: { readonly state: string; readonly rev: number }) => ({
  status: 200,
  headers: { etag: `"${docket.rev}"` },
  json: { state: docket.state, rev: docket.rev },
})

export const deskRoutes: readonly Route[] = [
  route({
    id: 'docket.correct',
    face: 'api',
    method: 'PUT',
    path: `${base}/:id/answers/:question`,
    rights: 'owner',
    summary: 'Change an answer for the customer; they see that it was, and why.',
    body: z.strictObject({
      value: maybe(z.json()),
      unsure: maybe(z.literal(true)),
      why: maybe(z.string().max(500)),
    }),
    answers: { 200: stateAnswer },
    match: 'required',
    load,
    act: (call) => {
      const { why, ...given } = call.body
      const q = questionOf(call.params.question ?? '')
      const done = correctAnswer(call, openDesk(call.loaded), q, given, why)
      return { ...stateOf(done.docket), writes: done.writes }
    },
  }),
  route({
    id: 'docket.ask-again',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/asking`,
    rights: 'owner',
    summary: 'Ask the customer a question (or for pictures) again; gives the message to send.',
    body: z.strictObject({
      question: z.string().min(1).max(64),
      text: maybe(z.string().min(1).max(500)),
    }),
    answers: { 201: askedAnswer },
    match: 'required',
    load,
    act: async (call) => {
      const { question, text } = call.body
      const done = await askAgain(call, openDesk(call.loaded), question, text)
      return {
        status: 201,
        headers: { etag: `"${done.docket.rev}"` },
        writes: done.writes,
        json: {
          state: done.docket.state,
          rev: done.docket.rev,
          link: done.link,
          message: done.message,
        },
      }
    },
  }),
  route({
    id: 'docket.answer-own',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/own-answers`,
    rights: 'owner',
    summary: 'Keep answers to the studio’s own questions, by question; no figure changes.',
    body: z.strictObject({ answers: z.record(z.string().max(40), z.string().max(500)) }),
    answers: { 200: stateAnswer },
    match: 'required',
    load,
    act: (call) => {
      const done = answerOwn(call, openDesk(call.loaded), call.body.answers)
      return { ...stateOf(done.docket), writes: done.writes }
    },
  }),
]
