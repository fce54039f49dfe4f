import * as z from 'zod'
import { reader } from '../../intake/reader'
import { replay } from '../../intake/replay'
import { script } from '../../intake/script'
import { estimate } from '../../quote/estimate'
import { customerEstimate } from '../acts/customer-estimate'
import { customerLink } from '../acts/customer-link'
import { checkMatch, deskLoad, openDesk } from '../acts/desk'
import { answerQuestion, openEnquiry, questionOf, unanswerQuestion } from '../acts/enquiry'
import { deskInput } from '../acts/estimating'
import { givenAnswers, parseAnswers } from '../acts/parse-answers'
import { answerAlong, checkPrefill } from '../acts/prefill'
import { submit } from '../acts/submit'
import { enquiryView, estimateView, questionView } from '../acts/views'
import { Problem } from '../http/problem'
import { type Route, route } from '../route'
import {
  customerEstimateAnswer,
  enquiryAnswer,
  linkAnswer,
  openedAnswer,
  submittedAnswer,
} from './shapes'

const base = '/api/v1/enquiries'
const nowYear = (now: number): number => new Date(now).getUTCFullYear()

export const enquiryRoutes: readonly Route[] = [
  route({
    id: 'enquiry.open',
    face: 'api',
    method: 'POST',
    path: base,
    rights: 'public',
    summary: 'Begin an enquiry; the key in the answer opens it from now on.',
    body: z.strictObject({
      language: z.exactOptional(z.string().max(20)),
      answers: z.exactOptional(givenAnswers),
    }),
    answers: { 201: openedAnswer },
    rate: { name: 'open', perMinute: 120 },
    act: async (call) => {
      const made = await openEnquiry(call, call.body.language ?? 'en', 'customer')
      const along = parseAnswers(call.body.answers ?? {})
      checkPrefill(along, call.now)
      const more = answerAlong(call, made.desk, along)
      const { current, progress } = replay(script, more.answers)
      return {
        status: 201,
        headers: { location: `${base}/${made.id}`, etag: `"${more.docket.rev}"` },
        writes: [...made.writes, ...more.writes],
        json: {
          id: made.id,
          key: made.key,
          state: more.docket.state,
          rev: more.docket.rev,
          script: script.version,
          question:
            current === null ? null : questionView(current, call.studio.words, more.answers),
          progress,
        },
      }
    },
  }),
  route({
    id: 'enquiry.read',
    face: 'api',
    method: 'GET',
    path: `${base}/:id`,
    rights: 'customer',
    summary: 'Where the enquiry stands: the answers so far and the question asked now.',
    answers: { 200: enquiryAnswer },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: ({ loaded, studio, origin }) => {
      const desk = openDesk(loaded)
      return {
        status: 200,
        headers: { etag: `"${desk.docket.rev}"` },
        json: {
          ...enquiryView(desk, desk.answers, studio.words, desk.replayed),
          link: `${origin}/e/${desk.id}`,
        },
      }
    },
  }),
  route({
    id: 'enquiry.answer',
    face: 'api',
    method: 'PUT',
    path: `${base}/:id/answers/:question`,
    rights: 'customer',
    summary: 'Answer a question, change an answer, or say that you are not sure.',
    body: z.strictObject({
      value: z.exactOptional(z.json()),
      unsure: z.exactOptional(z.literal(true)),
    }),
    answers: { 200: enquiryAnswer },
    match: 'optional',
    again: true,
    rate: { name: 'answer', perMinute: 1200 },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: (call) => {
      const desk = openDesk(call.loaded)
      const q = questionOf(call.params.question ?? '')
      checkMatch(call, desk)
      const done = answerQuestion(call, desk, q, call.body, nowYear(call.now))
      const { words } = call.studio
      const replayed = replay(script, done.answers)
      return {
        status: 200,
        headers: { etag: `"${done.docket.rev}"` },
        writes: done.writes,
        json: {
          ...enquiryView({ id: desk.id, docket: done.docket }, done.answers, words, replayed),
          reply: replyTo(q.id, done.answers, words),
        },
      }
    },
  }),
  route({
    id: 'enquiry.unanswer',
    face: 'api',
    method: 'DELETE',
    path: `${base}/:id/answers/:question`,
    rights: 'customer',
    summary: 'Take an answer back; the question is asked again.',
    answers: { 200: enquiryAnswer },
    match: 'optional',
    again: true,
    rate: { name: 'answer', perMinute: 1200 },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: (call) => {
      const desk = openDesk(call.loaded)
      const q = questionOf(call.params.question ?? '')
      checkMatch(call, desk)
      const done = unanswerQuestion(call, desk, q)
      return {
        status: 200,
        headers: { etag: `"${done.docket.rev}"` },
        writes: done.writes,
        json: enquiryView({ id: desk.id, docket: done.docket }, done.answers, call.studio.words),
      }
    },
  }),
  route({
    id: 'enquiry.estimate',
    face: 'api',
    method: 'GET',
    path: `${base}/:id/estimate`,
    rights: 'customer',
    summary: 'The estimate so far.',
    answers: { 200: customerEstimateAnswer },
    rate: { name: 'estimate', perMinute: 600 },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: ({ loaded, studio, now }) => {
      const desk = openDesk(loaded)
      const missing = desk.replayed.needed.filter((id) => questionOf(id).stage === 'first')
      if (missing.length > 0)
        throw new Problem('not-now', {
          detail: { key: 'problem.not-now.missing' },
          more: { missing },
        })
      const made = estimate(deskInput(studio, now, desk))
      const view = estimateView(made, studio.words, null)
      return { status: 200, json: customerEstimate(view, studio.profile.shows) }
    },
  }),
  route({
    id: 'enquiry.link',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/links`,
    rights: 'customer',
    summary: 'Make a private link that opens the enquiry in a browser.',
    body: z.strictObject({}),
    answers: { 201: linkAnswer },
    rate: { name: 'link', perMinute: 60 },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: async (call) => {
      const { link, until, writes } = await customerLink(call, openDesk(call.loaded).id, 'api')
      return { status: 201, writes, json: { link, until } }
    },
  }),
  route({
    id: 'enquiry.submit',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/submission`,
    rights: 'customer',
    summary: 'Send the enquiry to the studio.',
    body: z.strictObject({
      consent: z.literal(true),
      /** A site that asks in its own forms and doubts that a person filled them says so here. */
      doubtful: z.exactOptional(z.boolean()),
    }),
    answers: { 201: submittedAnswer },
    match: 'optional',
    again: true,
    rate: { name: 'submit', perMinute: 120 },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: async (call) => {
      const desk = openDesk(call.loaded)
      checkMatch(call, desk)
      const sent = await submit(call, desk, call.body.doubtful ? ['told'] : [])
      return {
        status: 201,
        headers: { etag: `"${sent.docket.rev}"` },
        writes: sent.writes,
        json: {
          reference: sent.reference,
          state: sent.docket.state,
          rev: sent.docket.rev,
          estimate: customerEstimate(
            estimateView(sent.made, call.studio.words, sent.digest),
            call.studio.profile.shows,
          ),
        },
      }
    },
  }),
]

const replyTo = (
  id: string,
  answers: Parameters<typeof replay>[1],
  words: import('../../words/render').Words,
) => {
  const phrase = questionOf(id).reply(reader(answers))
  return { key: phrase.key, params: phrase.params ?? {}, text: words.say(phrase) }
}
