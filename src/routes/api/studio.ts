import * as z from 'zod'
import { BENCH_KINDS } from '../../docket/kinds'
import { STATES, TURNS } from '../../docket/states'
import { estimate } from '../../quote/estimate'
import { selectEstimatesOf } from '../../store/estimates'
import { listHeads } from '../../store/heads'
import { sheetFor } from '../acts/agreed'
import { addBenchLines, benchLine } from '../acts/bench-lines'
import { checkMatch, deskLoad, openDesk } from '../acts/desk'
import { openEnquiry } from '../acts/enquiry'
import { deskInput } from '../acts/estimating'
import { askExtra } from '../acts/extras'
import { handOver } from '../acts/handing-over'
import { dateJob, move, movesByHand } from '../acts/moving'
import { eraseMine } from '../acts/my-data'
import { addPhoto } from '../acts/photo'
import { readPlace, writePlace } from '../acts/place'
import { reply } from '../acts/replying'
import { revise, revisionDiff, revisionOf, send } from '../acts/revising'
import { enquiryView, estimateView } from '../acts/views'
import { type Form, type Route, route } from '../route'
import { adjustments } from './adjustments'
import {
  benchAnswer,
  docketAnswer,
  estimateAnswer,
  extraAnswer,
  linesAnswer,
  listAnswer,
  openedAnswer,
  photoAnswer,
  revisionAnswer,
  sentAnswer,
  sheetAnswer,
  stateAnswer,
} from './shapes'

const base = '/api/v1/dockets'
const day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/)
const maybe = z.exactOptional
const yearOf = (now: number): number => new Date(now).getUTCFullYear()
type Params = { readonly params: Readonly<Record<string, string>> }
const load = ({ params }: Params) => deskLoad(params.id ?? '')
const loadAll = ({ params }: Params) => ({
  ...deskLoad(params.id ?? ''),
  estimates: selectEstimatesOf(params.id ?? ''),
})
const etag = (rev: number) => ({ etag: `"${rev}"` })

export const docketRoutes: readonly Route[] = [
  route({
    id: 'docket.open',
    face: 'api',
    method: 'POST',
    path: base,
    rights: 'owner',
    summary: 'The studio opens a docket itself, for somebody on the phone.',
    body: z.strictObject({ language: maybe(z.string().max(20)) }),
    answers: { 201: openedAnswer },
    act: async (call) => {
      const made = await openEnquiry(call, call.body.language ?? 'en', 'studio')
      const view = enquiryView(made.desk, made.desk.answers, call.studio.words)
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
    act: ({ loaded, query, studio }) => {
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
            name: h.personName,
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
          ...enquiryView(desk, desk.answers, studio.words, desk.replayed),
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
          revisions: desk.docket.revisions,
          decisions: desk.docket.decisions,
          dated: desk.docket.dated,
          extras: desk.docket.extras,
          bench: desk.docket.bench,
          texts: Object.fromEntries(desk.texts),
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
        json: { lines: desk.lines.filter((l) => l.seq > after), rev: desk.docket.rev },
      }
    },
  }),
  route({
    id: 'docket.trial',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/trial`,
    rights: 'owner',
    summary: 'What adjustments would come to; nothing is kept.',
    body: z.strictObject({ adjustments: maybe(adjustments), start: maybe(day) }),
    answers: { 200: z.looseObject({ estimate: estimateAnswer }) },
    load,
    act: ({ loaded, body, studio, now }) => {
      const desk = openDesk(loaded)
      const before = estimate(deskInput(studio, now, desk))
      const input = deskInput(studio, now, desk, body.adjustments ?? [])
      const made = estimate(body.start === undefined ? input : { ...input, start: body.start })
      return {
        status: 200,
        json: {
          estimate: estimateView(made, studio.words, null),
          offer: made.offer,
          before: { offer: before.offer, readyLikely: before.plan.readyLikely },
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
        json: { ...to, rev: docket.rev, diff: revisionDiff(from, to) },
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
    }),
    answers: { 200: stateAnswer },
    match: 'required',
    load: loadAll,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const done = dateJob(call, desk, call.body)
      return {
        status: 200,
        headers: etag(done.docket.rev),
        writes: done.writes,
        json: { state: done.docket.state, rev: done.docket.rev, plan: done.plan },
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
    body: z.strictObject({ to: z.enum(STATES), why: maybe(z.string().max(1000)) }),
    answers: { 200: stateAnswer },
    match: 'required',
    load,
    act: (call) => {
      const done = move(call, openDesk(call.loaded), call.body.to, call.body.why)
      return {
        status: 200,
        headers: etag(done.docket.rev),
        writes: done.writes,
        json: {
          state: done.docket.state,
          rev: done.docket.rev,
          moves: movesByHand(done.docket.state),
        },
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
    id: 'bench.lines',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/lines`,
    rights: 'bench',
    summary: `Bench lines, many at once and in any order (${BENCH_KINDS.join(', ')}); the same id twice is kept once.`,
    body: z.strictObject({ lines: z.array(benchLine).min(1).max(500) }),
    answers: { 200: benchAnswer },
    again: true,
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const done = addBenchLines(call, desk, call.body.lines)
      return {
        status: 200,
        headers: etag(done.docket.rev),
        writes: done.writes,
        json: {
          added: done.added,
          already: done.already,
          rev: done.docket.rev,
          state: done.docket.state,
        },
      }
    },
  }),
  route({
    id: 'bench.photo',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/photos`,
    rights: 'bench',
    summary: 'A picture from the bench (multipart: file, subject).',
    body: 'multipart',
    answers: { 201: photoAnswer },
    again: true,
    load,
    act: async (call) => {
      const done = await addPhoto(call, openDesk(call.loaded), call.body as unknown as Form)
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
    id: 'sheet.read',
    face: 'api',
    method: 'GET',
    path: `${base}/:id/sheet`,
    rights: 'bench',
    summary: 'The job sheet: the agreed steps in working order, panels, checks.',
    answers: { 200: sheetAnswer },
    load: loadAll,
    act: ({ loaded, studio, now }) => {
      const desk = openDesk(loaded)
      const { sheet, revision } = sheetFor(desk, loaded.estimates, yearOf(now))
      const { words } = studio
      return {
        status: 200,
        headers: etag(desk.docket.rev),
        json: {
          id: desk.id,
          reference: desk.docket.reference,
          state: desk.docket.state,
          rev: desk.docket.rev,
          revision: revision.revision,
          ...sheet,
          steps: sheet.steps.map((s) => ({
            ...s,
            text: s.name ?? words.say(`step.${s.id}`),
            do: s.name ?? words.say(`step.${s.id}.do`),
          })),
          panels: sheet.panels.map((p) => ({
            ...p,
            text: words.say(`panel.${p.panel}`),
            verdictText: words.say(`verdict.${p.verdict}`),
          })),
          checks: sheet.checks.map((c) => ({ ...c, text: words.say(`check.${c.id}`) })),
          cautions: sheet.cautions.map((id) => ({ id, text: words.say(`caution.${id}`) })),
          extras: desk.docket.extras,
          removals: desk.docket.bench.removals,
        },
      }
    },
  }),
  route({
    id: 'extra.ask',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/extras`,
    rights: 'bench',
    summary: 'Ask the customer about extra work before it is done.',
    body: z.strictObject({
      text: z.string().min(1).max(2000),
      minutes: z.int().min(0).max(10_000),
      money: maybe(z.int().min(0).max(100_000_000)),
      finding: maybe(z.string().max(64)),
      steps: maybe(z.array(z.string().max(64)).max(20)),
    }),
    answers: { 201: extraAnswer },
    again: true,
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const { docket, writes, ...done } = askExtra(call, desk, call.body)
      return {
        status: 201,
        headers: etag(docket.rev),
        writes,
        json: { ...done, rev: docket.rev, state: docket.state },
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
      paid: maybe(z.int().min(0).max(1_000_000_000)),
    }),
    answers: { 200: stateAnswer },
    match: 'required',
    load: loadAll,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const { sheet, revision } = sheetFor(desk, call.loaded.estimates, yearOf(call.now))
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
  route({
    id: 'docket.erase-personal',
    face: 'api',
    method: 'DELETE',
    path: `${base}/:id/personal-data`,
    rights: 'owner',
    summary: 'Delete what tells who a customer is; the figures stay.',
    answers: { 204: null },
    match: 'required',
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      checkMatch(call, desk.docket)
      return { status: 204, ...eraseMine(call, desk) }
    },
  }),
]
