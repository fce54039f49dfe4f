import * as z from 'zod'
import { day } from '../../docket/line-shapes'
import { estimate } from '../../quote/estimate'
import { TREATMENTS } from '../../quote/options/treatment'
import { deskLoad, openDesk } from '../acts/desk'
import { deskInput } from '../acts/estimating'
import { revise, revisionDiff, revisionOf, send } from '../acts/revising'
import { estimateView } from '../acts/views'
import { isoTimes } from '../http/iso-times'
import { type Route, route } from '../route'
import { adjustments } from './adjustments'
import { estimateAnswer, revisionAnswer, sentAnswer } from './shapes'

const base = '/api/v1/dockets'
const maybe = z.exactOptional
type Params = { readonly params: Readonly<Record<string, string>> }
const load = ({ params }: Params) => deskLoad(params.id ?? '')
/** An option: how the paint is treated, on which panels (none: all), and what the studio says of it. */
const optionShape = z.strictObject({
  treatment: z.enum(TREATMENTS),
  panels: maybe(z.array(z.string().max(64)).min(1).max(40)),
  text: maybe(z.string().max(500)),
})
const etag = (rev: number) => ({ etag: `"${rev}"` })

export const revisionRoutes: readonly Route[] = [
  route({
    id: 'docket.trial',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/trial`,
    rights: 'owner',
    summary: 'What adjustments would come to, beside those in force; nothing is kept.',
    body: z.strictObject({ adjustments: maybe(adjustments), start: maybe(day) }),
    answers: { 200: z.looseObject({ estimate: estimateAnswer }) },
    load,
    act: ({ loaded, body, studio, now }) => {
      const desk = openDesk(loaded)
      const before = estimate(
        deskInput(studio, now, desk, desk.docket.revisions.at(-1)?.adjustments ?? []),
      )
      const input = deskInput(studio, now, desk, body.adjustments ?? [])
      const made = estimate(body.start === undefined ? input : { ...input, start: body.start })
      return {
        status: 200,
        json: {
          estimate: estimateView(made, studio.words, null),
          offer: made.offer,
          before: {
            offer: before.offer,
            readyLikely: before.plan.readyLikely,
            readyCautious: before.plan.readyCautious,
            notes: before.riskNotes.map((n) => n.id),
          },
          dropped: made.adjusted.dropped,
        },
      }
    },
  }),
  route({
    id: 'revision.make',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/revisions`,
    rights: 'owner',
    summary: 'Make the next revision of the quote.',
    body: z.strictObject({
      adjustments: maybe(adjustments),
      message: maybe(z.string().max(2000)),
      validDays: maybe(z.int().min(1).max(365)),
      /** Asked beforehand, with tax; absent: the studio's share. */
      deposit: maybe(z.int().min(0).max(1_000_000_000)),
      /** Two or three ways to treat the paint that the customer chooses between. */
      options: maybe(z.array(optionShape).min(2).max(3)),
    }),
    answers: { 201: revisionAnswer },
    match: 'required',
    load,
    act: async (call) => {
      const desk = openDesk(call.loaded)
      const done = await revise(call, desk, {
        adjustments: call.body.adjustments ?? [],
        message: call.body.message,
        validDays: call.body.validDays,
        deposit: call.body.deposit,
        options: call.body.options,
      })
      return {
        status: 201,
        headers: {
          ...etag(done.docket.rev),
          location: `${base}/${desk.id}/revisions/${done.body.revision}`,
        },
        writes: done.writes,
        json: {
          revision: done.body.revision,
          rev: done.docket.rev,
          offer: done.body.offer,
          validUntil: done.body.validUntil,
          dropped: done.body.dropped,
          ...(done.body.options ? { options: done.body.options } : {}),
          diff: done.diff,
          estimate: estimateView(done.made, call.studio.words, done.digest),
        },
      }
    },
  }),
  route({
    id: 'revision.read',
    face: 'api',
    method: 'GET',
    path: `${base}/:id/revisions/:n`,
    rights: 'bench',
    summary: 'One revision, and what it changes against another (`from`; else the one before).',
    query: z.strictObject({ from: maybe(z.string().regex(/^\d{1,4}$/)) }),
    answers: { 200: revisionAnswer },
    load,
    act: ({ loaded, params, query }) => {
      const { docket } = openDesk(loaded)
      const to = revisionOf(docket, params.n ?? '')
      const from =
        query.from === undefined
          ? (docket.revisions.find((r) => r.revision === to.revision - 1) ?? null)
          : revisionOf(docket, query.from)
      return {
        status: 200,
        headers: etag(docket.rev),
        json: { ...(isoTimes(to) as object), rev: docket.rev, diff: revisionDiff(from, to) },
      }
    },
  }),
  route({
    id: 'revision.send',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/revisions/:n/sending`,
    rights: 'owner',
    summary: 'Send a revision: a private link and a message ready to paste.',
    body: z.strictObject({}),
    answers: { 201: sentAnswer },
    match: 'required',
    load,
    act: async (call) => {
      const desk = openDesk(call.loaded)
      const revision = revisionOf(desk.docket, call.params.n ?? '')
      const done = await send(call, desk, revision)
      return {
        status: 201,
        headers: etag(done.docket.rev),
        writes: done.writes,
        json: {
          revision: revision.revision,
          rev: done.docket.rev,
          state: done.docket.state,
          link: done.link,
          message: done.message,
        },
      }
    },
  }),
]
