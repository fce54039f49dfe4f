import * as z from 'zod'
import { dayView } from '../acts/day'
import { deskLoad, openDesk } from '../acts/desk'
import { tellAfter } from '../acts/telling-after'
import { type Route, route } from '../route'
import { dayAnswer, stateAnswer } from './shapes'

const base = '/api/v1/enquiries/:id'

export const dayApiRoutes: readonly Route[] = [
  route({
    id: 'day.read',
    face: 'api',
    method: 'GET',
    path: `${base}/day`,
    rights: 'customer',
    summary: 'How it stands with the car: the day, why it waits, and what was said afterwards.',
    answers: { 200: dayAnswer },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: ({ loaded, studio }) => ({ status: 200, json: dayView(studio, openDesk(loaded)) }),
  }),
  route({
    id: 'day.tell',
    face: 'api',
    method: 'POST',
    path: `${base}/told`,
    rights: 'customer',
    summary: 'Say that all is well after the hand-over, or what is wrong.',
    body: z.strictObject({
      well: z.boolean(),
      text: z.exactOptional(z.string().max(2000)),
    }),
    answers: { 201: stateAnswer },
    again: true,
    rate: { name: 'decide', perMinute: 120 },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: async (call) => {
      const { docket, writes } = await tellAfter(call, openDesk(call.loaded), call.body)
      return { status: 201, writes, json: { state: docket.state, rev: docket.rev } }
    },
  }),
]
