import * as z from 'zod'
import { day } from '../../docket/line-shapes'
import { selectEstimatesOf } from '../../store/estimates'
import { accountView, notePaid, PAID } from '../acts/account'
import { deskLoad, openDesk } from '../acts/desk'
import { type Route, route } from '../route'
import { stateAnswer } from './shapes'

const base = '/api/v1/dockets'
const minor = z.int()
const sums = { net: minor, tax: minor, total: minor }

const accountAnswer = z.object({
  state: z.enum(['open', 'part', 'final']),
  reference: z.string().nullable(),
  revision: z.int(),
  currency: z.string(),
  offered: z.object(sums),
  lines: z.array(
    z.object({
      step: z.string(),
      name: z.string().nullable(),
      text: z.string(),
      offered: minor,
      charged: minor,
      planned: z.int(),
      used: z.int().nullable(),
      done: z.enum(['done', 'part', 'not', 'no-step']),
      byTime: z.boolean(),
    }),
  ),
  extras: z.array(
    z.object({
      extra: z.string(),
      text: z.string(),
      amount: minor,
      tax: minor,
      total: minor,
      minutes: z.int(),
    }),
  ),
  corrected: minor,
  smaller: minor,
  ...sums,
  deposit: minor,
  paid: z.array(z.object({ what: z.enum(PAID), amount: minor, on: day })),
  paidTotal: minor,
  balance: minor,
})

type Params = { readonly params: Readonly<Record<string, string>> }
const load = ({ params }: Params) => ({
  ...deskLoad(params.id ?? ''),
  estimates: selectEstimatesOf(params.id ?? ''),
})

export const accountApiRoutes: readonly Route[] = [
  route({
    id: 'account.read',
    face: 'api',
    method: 'GET',
    path: `${base}/:id/account`,
    rights: 'owner',
    summary: 'The account: offered beside charged by line, extras, tax, received, balance.',
    answers: { 200: accountAnswer },
    load,
    act: (call) => ({
      status: 200,
      json: accountView(call, openDesk(call.loaded), call.loaded.estimates),
    }),
  }),
  route({
    id: 'account.paid',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/paid`,
    rights: 'owner',
    summary: 'Write down money that was received or given back; nothing is paid through the API.',
    body: z.strictObject({
      what: z.enum(PAID),
      amount: z.int().min(1).max(1_000_000_000),
      on: z.exactOptional(day),
    }),
    answers: { 201: stateAnswer },
    match: 'required',
    load,
    act: (call) => {
      const { docket, writes } = notePaid(call, openDesk(call.loaded), call.body)
      return {
        status: 201,
        headers: { etag: `"${docket.rev}"` },
        writes,
        json: { state: docket.state, rev: docket.rev },
      }
    },
  }),
]
