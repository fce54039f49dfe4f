import * as z from 'zod'
import { day } from '../../docket/line-shapes'
import { STATES } from '../../docket/states'
import { selectEstimatesOf } from '../../store/estimates'
import { sheetFor } from '../acts/agreed'
import { dateJob } from '../acts/dating'
import { datedCars, daysLoad } from '../acts/days'
import { deskLoad, openDesk } from '../acts/desk'
import { vouch } from '../acts/doubting'
import { handOver } from '../acts/handing-over'
import { movesByHand } from '../acts/moving'
import { reply } from '../acts/replying'
import { moveAndTell } from '../acts/telling'
import { type Route, route } from '../route'
import { stateAnswer } from './shapes'

const base = '/api/v1/dockets'
const maybe = z.exactOptional
const yearOf = (now: number): number => new Date(now).getUTCFullYear()
type Params = { readonly params: Readonly<Record<string, string>> }
const load = ({ params }: Params) => deskLoad(params.id ?? '')
const loadAll = ({ params }: Params) => ({
  ...deskLoad(params.id ?? ''),
  estimates: selectEstimatesOf(params.id ?? ''),
})
const etag = (rev: number) => ({ etag: `"${rev}"` })

export const jobRoutes: readonly Route[] = [
  route({
    id: 'docket.date',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/date`,
    rights: 'owner',
    summary: 'Set the day the work begins; answers with the plan from that day.',
    body: z.strictObject({
      start: day,
      startMinute: maybe(z.int().min(0).max(1439)),
      people: maybe(z.int().min(1).max(6)),
      /** Answers 409 with what stands against it instead of dating it all the same. */
      onlyIfFree: maybe(z.boolean()),
    }),
    answers: { 200: stateAnswer },
    match: 'required',
    load: (input) => ({ ...loadAll(input), ...daysLoad() }),
    act: (call) => {
      const desk = openDesk(call.loaded)
      const cars = datedCars(call.loaded, call.studio, call.now)
      const done = dateJob(call, desk, cars, call.body)
      return {
        status: 200,
        headers: etag(done.docket.rev),
        writes: done.writes,
        json: {
          state: done.docket.state,
          rev: done.docket.rev,
          plan: done.plan,
          against: done.against,
        },
      }
    },
  }),
  route({
    id: 'docket.move',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/move`,
    rights: 'bench',
    summary: 'Move a docket to another state by hand.',
    body: z.strictObject({
      to: z.enum(STATES),
      why: maybe(z.string().max(1000)),
      /** Turned down: who else may help. */
      turn: maybe(z.string().max(1000)),
      /** What the paid inspection takes and costs, as the customer pays it. */
      lookOver: maybe(
        z.strictObject({
          minutes: z.int().min(5).max(600),
          amount: z.int().min(0).max(1_000_000_000),
        }),
      ),
    }),
    answers: { 200: stateAnswer },
    match: 'required',
    load,
    act: async (call) => {
      const { to, why, ...more } = call.body
      const done = await moveAndTell(call, openDesk(call.loaded), to, why, more)
      return {
        status: 200,
        headers: etag(done.docket.rev),
        writes: done.writes,
        json: {
          state: done.docket.state,
          rev: done.docket.rev,
          moves: movesByHand(done.docket.state),
          ...(done.message === null ? {} : { message: done.message }),
        },
      }
    },
  }),
  route({
    id: 'docket.genuine',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/genuine`,
    rights: 'owner',
    summary: 'Say that an enquiry that waits apart is genuine; it joins the others.',
    body: z.strictObject({}),
    answers: { 200: stateAnswer },
    match: 'required',
    load,
    act: (call) => {
      const { docket, writes } = vouch(call, openDesk(call.loaded))
      return {
        status: 200,
        headers: etag(docket.rev),
        writes,
        json: { state: docket.state, rev: docket.rev },
      }
    },
  }),
  route({
    id: 'docket.reply',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/reply`,
    rights: 'owner',
    summary: 'Reply to a question of the customer’s; it stands on the quote page.',
    body: z.strictObject({ text: z.string().min(1).max(2000) }),
    answers: { 200: stateAnswer },
    again: true,
    load,
    act: (call) => {
      const { docket, writes } = reply(call, openDesk(call.loaded), call.body.text)
      return {
        status: 200,
        headers: etag(docket.rev),
        writes,
        json: { state: docket.state, rev: docket.rev },
      }
    },
  }),
  route({
    id: 'docket.hand-over',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/handover`,
    rights: 'bench',
    summary: 'Hand the car over; answers 409 while a check that protects people is open.',
    body: z.strictObject({
      mileage: maybe(z.int().min(0).max(5_000_000)),
      name: maybe(z.string().max(200)),
      open: maybe(z.array(z.string().max(200)).max(20)),
      /** The day the car comes back for what stayed open. */
      returns: maybe(day),
      paid: maybe(z.int().min(0).max(1_000_000_000)),
    }),
    answers: { 200: stateAnswer },
    match: 'required',
    load: loadAll,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const { sheet, revision } = sheetFor(
        desk,
        call.loaded.estimates,
        yearOf(call.now),
        call.studio.engine.limits,
      )
      const done = handOver(call, desk, call.body, sheet, revision)
      return {
        status: 200,
        headers: etag(done.docket.rev),
        writes: done.writes,
        json: {
          state: done.docket.state,
          rev: done.docket.rev,
          account: done.docket.handedOver?.account ?? null,
        },
      }
    },
  }),
]
