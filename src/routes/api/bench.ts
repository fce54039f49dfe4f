import * as z from 'zod'
import { BENCH_KINDS } from '../../docket/kinds'
import { selectEstimatesOf } from '../../store/estimates'
import { sheetFor } from '../acts/agreed'
import { addBenchLines, benchLine, benchLineShapes } from '../acts/bench-lines'
import { deskLoad, openDesk } from '../acts/desk'
import { agreementView, askExtra } from '../acts/extras'
import { benchFacts } from '../acts/facts'
import { addPhoto } from '../acts/photo'
import { reIssueViews } from '../acts/re-issuing'
import { isoTimes } from '../http/iso-times'
import { type Form, type Route, route } from '../route'
import { benchAnswer, extraAnswer, photoAnswer, sheetAnswer } from './shapes'

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

export const benchRoutes: readonly Route[] = [
  route({
    id: 'bench.lines',
    face: 'api',
    method: 'POST',
    path: `${base}/:id/lines`,
    rights: 'bench',
    summary: `Bench lines, many at once and in any order (${BENCH_KINDS.join(', ')}); the same id twice is kept once.`,
    body: z.strictObject({ lines: z.array(benchLine).min(1).max(500) }),
    described: z.strictObject({ lines: z.array(benchLineShapes).min(1).max(500) }),
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
      const { sheet, revision } = sheetFor(
        desk,
        loaded.estimates,
        yearOf(now),
        studio.engine.limits,
      )
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
          facts: benchFacts(desk, words),
          extras: isoTimes(desk.docket.extras),
          /** What needs no asking, and what counts if nobody answers. */
          agreement: agreementView(desk),
          /** Smaller results asked about, and what was said. */
          reIssues: reIssueViews(desk),
          removals: isoTimes(desk.docket.bench.removals),
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
      /** What happens if the customer says no. */
      ifNot: maybe(z.string().min(1).max(500)),
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
]
