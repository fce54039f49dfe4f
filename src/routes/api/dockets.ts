import * as z from 'zod'
import { TURNS } from '../../docket/states'
import { estimate } from '../../quote/estimate'
import { listHeads } from '../../store/heads'
import { customerLink } from '../acts/customer-link'
import { deskLoad, openDesk } from '../acts/desk'
import { openEnquiry } from '../acts/enquiry'
import { deskInput } from '../acts/estimating'
import { movesByHand } from '../acts/moving'
import { openShort } from '../acts/opening'
import { givenAnswers, parseAnswers } from '../acts/parse-answers'
import { readPlace, writePlace } from '../acts/place'
import { enquiryView, estimateView } from '../acts/views'
import { isoTimes } from '../http/iso-times'
import { invalid } from '../http/problem'
import { type Route, route, type Who } from '../route'
import { docketAnswer, linesAnswer, linkAnswer, listAnswer, openedAnswer } from './shapes'

const base = '/api/v1/dockets'
const maybe = z.exactOptional
type Params = { readonly params: Readonly<Record<string, string>> }
const load = ({ params }: Params) => deskLoad(params.id ?? '')
const etag = (rev: number) => ({ etag: `"${rev}"` })

const PERSONAL = new Set(['contact', 'vin'])

/** The bench needs the car's facts, not whose car it is. */
const shownTo = (who: Who, view: ReturnType<typeof enquiryView>) =>
  who.kind === 'owner'
    ? view
    : {
        ...view,
        answers: view.answers.filter((a) => !PERSONAL.has(a.question)),
        setAside: view.setAside.filter((a) => !PERSONAL.has(a.question)),
      }

export const docketRoutes: readonly Route[] = [
  route({
    id: 'docket.link',
    face: 'api',
    method: 'POST',
    path: '/api/v1/dockets/:id/links',
    rights: 'owner',
    summary: 'A new private link for a customer whose own is old or lost.',
    body: z.strictObject({}),
    answers: { 201: linkAnswer },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: async (call) => {
      const { id } = openDesk(call.loaded)
      const { link, until, writes } = await customerLink(call, id, 'issued again')
      return { status: 201, writes, json: { link, until } }
    },
  }),
  route({
    id: 'docket.open',
    face: 'api',
    method: 'POST',
    path: base,
    rights: 'owner',
    summary: 'The studio opens a docket itself, for somebody on the phone.',
    body: z.strictObject({
      language: maybe(z.string().max(20)),
      /** An earlier docket of the same car: its answers are the first ones. */
      like: maybe(z.string().min(1).max(64)),
      answers: maybe(givenAnswers),
      plate: maybe(z.string().max(20)),
      /** They agreed that it is kept: sent at once when nothing needed is missing. */
      consent: maybe(z.literal(true)),
    }),
    answers: { 201: openedAnswer },
    load: ({ body }) => deskLoad(body.like ?? ''),
    act: async (call) => {
      const { body } = call
      if (body.like !== undefined && call.loaded.lines.length === 0)
        throw invalid([{ pointer: '/like', code: 'ERR_VALUE' }])
      const short = body.like !== undefined || body.answers !== undefined
      const made = short
        ? await openShort(call, {
            answers: parseAnswers(body.answers ?? {}),
            plate: body.plate,
            consent: body.consent === true,
            ...(body.like === undefined ? {} : { like: openDesk(call.loaded) }),
          })
        : await openEnquiry(call, body.language ?? 'en', 'studio')
      const docket = made.sent?.docket ?? made.desk.docket
      const now = { ...made.desk, docket }
      const view = enquiryView(now, made.desk.answers, call.studio.words)
      return {
        status: 201,
        headers: { location: `${base}/${made.id}`, ...etag(view.rev) },
        writes: made.writes,
        json: {
          id: made.id,
          key: made.key,
          state: view.state,
          rev: view.rev,
          script: view.script,
          question: view.question,
          progress: view.progress,
        },
      }
    },
  }),
  route({
    id: 'docket.list',
    face: 'api',
    method: 'GET',
    path: base,
    rights: 'bench',
    summary: 'Dockets by whose turn it is, latest first; `after` is the `next` of the page before.',
    query: z.strictObject({
      turn: maybe(z.enum(TURNS)),
      q: maybe(z.string().max(100)),
      after: maybe(z.string().max(200)),
      limit: maybe(z.string().regex(/^(100|[1-9]\d?)$/)),
    }),
    answers: { 200: listAnswer },
    load: ({ query }) => ({
      heads: listHeads({
        limit: Number(query.limit ?? 50) + 1,
        ...(query.turn === undefined ? {} : { turn: query.turn }),
        ...(query.q === undefined || query.q.trim() === '' ? {} : { q: query.q.trim() }),
        ...(query.after === undefined ? {} : { after: readPlace(query.after) }),
      }),
    }),
    act: ({ loaded, query, studio, who }) => {
      const limit = Number(query.limit ?? 50)
      const page = loaded.heads.slice(0, limit)
      const last = page.at(-1)
      return {
        status: 200,
        json: {
          dockets: page.map((h) => ({
            id: h.docket,
            reference: h.reference,
            state: h.state,
            turn: h.turn,
            rev: h.rev,
            title: h.title,
            name: who.kind === 'owner' ? h.personName : null,
            plate: who.kind === 'owner' ? h.plate : null,
            wish: h.wish,
            wantedBy: h.wantedBy,
            jobDate: h.jobDate,
            readyDate: h.readyDate,
            riskiest:
              h.riskiest === null
                ? null
                : { id: h.riskiest, text: studio.words.say(`risk.${h.riskiest}`) },
            price:
              h.priceLow === null
                ? null
                : {
                    low: h.priceLow,
                    likely: h.priceLikely,
                    high: h.priceHigh,
                    currency: h.currency,
                  },
            doubtful: h.doubtful,
            receivedAt: h.receivedAt === null ? null : new Date(h.receivedAt).toISOString(),
            changedAt: new Date(h.updatedAt).toISOString(),
          })),
          next: loaded.heads.length > limit && last ? writePlace(last) : null,
        },
      }
    },
  }),
  route({
    id: 'docket.read',
    face: 'api',
    method: 'GET',
    path: `${base}/:id`,
    rights: 'bench',
    summary: 'One docket as it stands, with its estimate and what may be done now.',
    answers: { 200: docketAnswer },
    load,
    act: ({ loaded, studio, now, who }) => {
      const desk = openDesk(loaded)
      const ready = desk.replayed.needed.length === 0 || desk.docket.submittedAt !== null
      return {
        status: 200,
        headers: etag(desk.docket.rev),
        json: {
          ...shownTo(who, enquiryView(desk, desk.answers, studio.words, desk.replayed)),
          turn: desk.head?.turn ?? 'theirs',
          title: desk.head?.title ?? '',
          person: who.kind === 'owner' ? (desk.people[0] ?? null) : null,
          photos: desk.photos.map(({ id, subject, mime, width, height }) => ({
            id,
            subject,
            mime,
            width,
            height,
          })),
          estimate: ready
            ? estimateView(estimate(deskInput(studio, now, desk)), studio.words, null)
            : null,
          revisions: isoTimes(desk.docket.revisions),
          decisions: isoTimes(desk.docket.decisions),
          dated: isoTimes(desk.docket.dated),
          extras: isoTimes(desk.docket.extras),
          bench: isoTimes(desk.docket.bench),
          texts: who.kind === 'owner' ? Object.fromEntries(desk.texts) : {},
          moves: movesByHand(desk.docket.state),
        },
      }
    },
  }),
  route({
    id: 'docket.lines',
    face: 'api',
    method: 'GET',
    path: `${base}/:id/lines`,
    rights: 'bench',
    summary: 'The lines of a docket behind `after`.',
    query: z.strictObject({ after: maybe(z.string().regex(/^\d{1,9}$/)) }),
    answers: { 200: linesAnswer },
    load,
    act: ({ loaded, query }) => {
      const desk = openDesk(loaded)
      const after = Number(query.after ?? 0)
      return {
        status: 200,
        json: { lines: isoTimes(desk.lines.filter((l) => l.seq > after)), rev: desk.docket.rev },
      }
    },
  }),
]
