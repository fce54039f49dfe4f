import * as z from 'zod'
import { UNANSWERED } from '../../docket/kinds'
import { selectEstimatesOf } from '../../store/estimates'
import { agreedRevision, estimateBehind } from '../acts/agreed'
import { decide, decideExtra, withdraw } from '../acts/deciding'
import { type Desk, deskLoad, openDesk } from '../acts/desk'
import { eraseLoad, eraseMine } from '../acts/erasing'
import { recordFor } from '../acts/handing-over'
import { myData } from '../acts/my-data'
import { addPhoto, removePhoto } from '../acts/photo'
import { quoteView } from '../acts/quote-view'
import { Problem } from '../http/problem'
import { type Form, type Route, route } from '../route'
import { anyAnswer, photoAnswer, quoteAnswer, recordAnswer, stateAnswer } from './shapes'

const base = '/api/v1/enquiries/:id'
const name = z.string().min(1).max(200)

const load = ({ params }: { readonly params: Readonly<Record<string, string>> }) => ({
  ...deskLoad(params.id ?? ''),
  estimates: selectEstimatesOf(params.id ?? ''),
})

const stateJson = (docket: Desk['docket']) => ({ state: docket.state, rev: docket.rev })

export const quoteRoutes: readonly Route[] = [
  route({
    id: 'photo.add',
    face: 'api',
    method: 'POST',
    path: `${base}/photos`,
    rights: 'customer',
    summary: 'Add a picture (multipart: file, subject).',
    body: 'multipart',
    answers: { 201: photoAnswer },
    again: true,
    rate: { name: 'photo', perMinute: 120 },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: async (call) => {
      const desk = openDesk(call.loaded)
      const done = await addPhoto(call, desk, call.body as unknown as Form)
      return {
        status: 201,
        writes: done.writes,
        before: done.before,
        undo: done.undo,
        json: { photo: done.id, rev: done.docket.rev },
      }
    },
  }),
  route({
    id: 'photo.read',
    face: 'api',
    method: 'GET',
    path: `${base}/photos/:photo`,
    rights: 'customer',
    summary: 'One of your pictures.',
    answers: { 200: 'other' },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: async (call) => {
      const photo = openDesk(call.loaded).photos.find((p) => p.id === call.params.photo)
      const body = photo ? await call.deps.photos.get(photo.key) : null
      if (!photo || body === null) throw new Problem('unknown')
      return { status: 200, bytes: { body, mime: photo.mime } }
    },
  }),
  route({
    id: 'photo.remove',
    face: 'api',
    method: 'DELETE',
    path: `${base}/photos/:photo`,
    rights: 'customer',
    summary: 'Take a picture back.',
    answers: { 204: null },
    again: true,
    rate: { name: 'photo', perMinute: 120 },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: (call) => {
      const done = removePhoto(call, openDesk(call.loaded), call.params.photo ?? '')
      return { status: 204, writes: done.writes, after: done.after }
    },
  }),
  route({
    id: 'quote.read',
    face: 'api',
    method: 'GET',
    path: `${base}/quote`,
    rights: 'customer',
    summary: 'The quote as it was sent last.',
    answers: { 200: quoteAnswer },
    load,
    act: ({ loaded, studio }) => {
      const desk = openDesk(loaded)
      const { sent } = desk.docket
      if (!sent) throw new Problem('not-now', { detail: { key: 'problem.not-now.no-quote' } })
      return {
        status: 200,
        headers: { etag: `"${desk.docket.rev}"` },
        json: quoteView(
          desk,
          sent,
          estimateBehind(sent, loaded.estimates),
          studio,
          loaded.estimates,
        ),
      }
    },
  }),
  route({
    id: 'quote.decide',
    face: 'api',
    method: 'POST',
    path: `${base}/quote/decision`,
    rights: 'customer',
    summary: 'Accept, decline or ask about the revision you have read.',
    body: z.strictObject({
      decision: z.enum(['accept', 'decline', 'ask']),
      revision: z.int().min(1),
      name: z.exactOptional(name),
      option: z.exactOptional(z.string().max(40)),
      acknowledged: z.exactOptional(z.array(z.string().max(64)).max(100)),
      text: z.exactOptional(z.string().max(2000)),
      /** With a yes: extras up to this much in all, with tax, need no asking; absent or 0: ask each time. */
      extrasLimit: z.exactOptional(z.int().min(0).max(1_000_000_000)),
      /** With a yes: what counts where the studio asks and nobody answers; absent: it waits. */
      unanswered: z.exactOptional(z.enum(UNANSWERED)),
      /** Who decides then, for `named`. */
      decides: z.exactOptional(name),
    }),
    answers: { 200: stateAnswer },
    match: 'optional',
    again: true,
    rate: { name: 'decide', perMinute: 120 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const done = decide(call, desk, call.body, call.loaded.estimates)
      return { status: 200, writes: done.writes, json: stateJson(done.docket) }
    },
  }),
  route({
    id: 'extra.decide',
    face: 'api',
    method: 'POST',
    path: `${base}/extras/:extra/decision`,
    rights: 'customer',
    summary: 'Agree to or refuse extra work.',
    body: z.strictObject({ decision: z.enum(['agree', 'refuse']), name }),
    answers: { 200: stateAnswer },
    again: true,
    rate: { name: 'decide', perMinute: 120 },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: (call) => {
      const desk = openDesk(call.loaded)
      const done = decideExtra(call, desk, call.params.extra ?? '', call.body, 'link')
      return { status: 200, writes: done.writes, json: stateJson(done.docket) }
    },
  }),
  route({
    id: 'enquiry.withdraw',
    face: 'api',
    method: 'POST',
    path: `${base}/withdrawal`,
    rights: 'customer',
    summary: 'Take the enquiry back.',
    body: z.strictObject({}),
    answers: { 200: stateAnswer },
    match: 'optional',
    again: true,
    rate: { name: 'decide', perMinute: 120 },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: (call) => {
      const done = withdraw(call, openDesk(call.loaded))
      return { status: 200, writes: done.writes, json: stateJson(done.docket) }
    },
  }),
  route({
    id: 'record.read',
    face: 'api',
    method: 'GET',
    path: `${base}/record`,
    rights: 'customer',
    summary: 'The record of what was done, once the car was handed over.',
    answers: { 200: recordAnswer },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const revision = agreedRevision(desk)
      const found = recordFor(call, desk, estimateBehind(revision, call.loaded.estimates), revision)
      return { status: 200, json: recordView(found, call.studio.words) }
    },
  }),
  route({
    id: 'data.read',
    face: 'api',
    method: 'GET',
    path: `${base}/data`,
    rights: 'customer',
    summary: 'Everything you gave us.',
    answers: { 200: anyAnswer },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: ({ loaded }) => ({ status: 200, json: myData(openDesk(loaded)) }),
  }),
  route({
    id: 'data.erase',
    face: 'api',
    method: 'DELETE',
    path: `${base}/data`,
    rights: 'customer',
    summary: 'Delete what you gave us that tells who you are.',
    answers: { 204: null },
    again: true,
    rate: { name: 'decide', perMinute: 120 },
    load: ({ params }) => eraseLoad(params.id ?? ''),
    act: (call) => ({
      status: 204,
      ...eraseMine(call, openDesk(call.loaded), call.loaded.estimates),
    }),
  }),
]

const recordView = (
  found: ReturnType<typeof recordFor>,
  words: import('../../words/render').Words,
) => ({
  date: found.date,
  panels: found.record.panels.map((p) => ({ ...p, text: words.say(`panel.${p.panel}`) })),
  done: found.record.done.map((id) => ({ id, text: words.say(`step.${id}`) })),
  left: found.record.left.map((l) => ({
    ...l,
    text: words.say(l.why === 'turned-down' ? `refuse.${l.id}` : `step.${l.id}`),
  })),
  aftercare: found.record.aftercare.map((a) => ({ ...a, text: words.say(`aftercare.${a.id}`) })),
  account: found.account,
  open: found.open,
  returns: found.returns,
  extras: found.extras,
  kept: found.kept,
  mileage: found.mileage,
  waived: found.waived,
})
