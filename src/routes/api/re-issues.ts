import * as z from 'zod'
import { AFTER_NO } from '../../jobsheet/polish-word'
import { selectEstimatesOf } from '../../store/estimates'
import { decideExtra } from '../acts/deciding'
import { deskLoad, openDesk } from '../acts/desk'
import { decideReIssue, reIssue, reIssueViews } from '../acts/re-issuing'
import { type Route, route } from '../route'
import { stateAnswer } from './shapes'

const maybe = z.exactOptional
const name = z.string().min(1).max(200)
const docket = '/api/v1/dockets/:id'

type Params = { readonly params: Readonly<Record<string, string>> }
const load = ({ params }: Params) => deskLoad(params.id ?? '')
const loadAll = ({ params }: Params) => ({
  ...deskLoad(params.id ?? ''),
  estimates: selectEstimatesOf(params.id ?? ''),
})

const word = z.strictObject({
  decision: z.enum(['go-on', 'no']),
  /** With a no: what is done instead. */
  instead: maybe(z.enum(AFTER_NO)),
  name,
})

/** A smaller result asked before polishing, and words taken down on the phone. */
export const reIssueRoutes: readonly Route[] = [
  route({
    id: 're-issue.ask',
    face: 'api',
    method: 'POST',
    path: `${docket}/re-issues`,
    rights: 'bench',
    summary: 'Ask the customer, before polishing, about the smaller result the readings leave.',
    body: z.strictObject({
      text: maybe(z.string().min(1).max(2000)),
      /** The whole net price from now on, where it is less; absent: as agreed. */
      net: maybe(z.int().min(0).max(1_000_000_000)),
    }),
    answers: { 201: stateAnswer },
    match: 'optional',
    again: true,
    load: loadAll,
    act: (call) => {
      const done = reIssue(call, openDesk(call.loaded), call.body, call.loaded.estimates)
      const asked = done.docket.reIssues.at(-1)
      return {
        status: 201,
        headers: { etag: `"${done.docket.rev}"` },
        writes: done.writes,
        json: {
          issue: done.issue,
          panels: asked?.panels ?? [],
          promised: asked?.promised ?? null,
          now: asked?.now ?? null,
          price: asked?.price ?? null,
          state: done.docket.state,
          rev: done.docket.rev,
        },
      }
    },
  }),
  route({
    id: 're-issue.by-phone',
    face: 'api',
    method: 'POST',
    path: `${docket}/re-issues/:issue/decision`,
    rights: 'bench',
    summary: 'Take down what the customer said on the phone about a smaller result.',
    body: word,
    answers: { 200: stateAnswer },
    again: true,
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const done = decideReIssue(call, desk, call.params.issue ?? '', call.body, 'phone')
      const { state, rev } = done.docket
      return { status: 200, writes: done.writes, json: { state, rev } }
    },
  }),
  route({
    id: 're-issue.decide',
    face: 'api',
    method: 'POST',
    path: '/api/v1/enquiries/:id/re-issues/:issue/decision',
    rights: 'customer',
    summary: 'Say whether to go on with a smaller result.',
    body: word,
    answers: { 200: stateAnswer },
    again: true,
    rate: { name: 'decide', perMinute: 120 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const done = decideReIssue(call, desk, call.params.issue ?? '', call.body, 'link')
      const { state, rev } = done.docket
      return { status: 200, writes: done.writes, json: { state, rev } }
    },
  }),
  route({
    id: 're-issues.read',
    face: 'api',
    method: 'GET',
    path: '/api/v1/enquiries/:id/re-issues',
    rights: 'customer',
    summary: 'What measuring made smaller, and what you said about it.',
    answers: { 200: z.looseObject({ reIssues: z.array(z.looseObject({ issue: z.string() })) }) },
    load,
    act: ({ loaded }) => ({ status: 200, json: { reIssues: reIssueViews(openDesk(loaded)) } }),
  }),
  route({
    id: 'extra.by-phone',
    face: 'api',
    method: 'POST',
    path: `${docket}/extras/:extra/decision`,
    rights: 'bench',
    summary: 'Take down what the customer said on the phone about extra work.',
    body: z.strictObject({ decision: z.enum(['agree', 'refuse']), name }),
    answers: { 200: stateAnswer },
    again: true,
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const done = decideExtra(call, desk, call.params.extra ?? '', call.body, 'phone')
      const { state, rev } = done.docket
      return { status: 200, writes: done.writes, json: { state, rev } }
    },
  }),
]
