import * as z from 'zod'
import { typedNumber } from '../../intake/typed-number'
import { blockersOf } from '../../jobsheet/checks'
import { decimalFromMinor, minorFromDecimal } from '../../kernel/currency'
import { BenchPage } from '../../pages/bench/bench-page'
import type { BenchView } from '../../pages/bench/bench-view'
import { HandoverPage } from '../../pages/bench/handover-page'
import { paths } from '../../pages/paths'
import { selectEstimatesOf } from '../../store/estimates'
import { sheetFor } from '../acts/agreed'
import { addBenchLines } from '../acts/bench-lines'
import { type Desk, deskLoad, openDesk } from '../acts/desk'
import { askExtra } from '../acts/extras'
import { accountOf, handOver } from '../acts/handing-over'
import { addPhoto } from '../acts/photo'
import { lineText } from '../acts/quote-view'
import { invalid, type Problem } from '../http/problem'
import { type Outcome, type Route, route } from '../route'
import { benchBody } from './bench-form'
import {
  type Any,
  fieldErrors,
  formOf,
  frameOf,
  keptOf,
  onceOf,
  orAgain,
  page,
  seeOther,
  textOf,
  wholeOf,
} from './page'

const load = ({ params }: { readonly params: Readonly<Record<string, string>> }) => ({
  ...deskLoad(params.id ?? ''),
  estimates: selectEstimatesOf(params.id ?? ''),
})

const yearOf = (now: number): number => new Date(now).getUTCFullYear()

type Stored = Parameters<typeof sheetFor>[1]

const benchView = (call: Any, desk: Desk, stored: Stored, step: string | null): BenchView => {
  const { sheet, estimate } = sheetFor(desk, stored, yearOf(call.now))
  const { bench, extras } = desk.docket
  const text = (ref: { readonly text: string }): string => desk.texts.get(ref.text) ?? ''
  return {
    id: desk.id,
    reference: desk.docket.reference ?? '',
    car: desk.head?.title ?? '',
    sheet,
    current: step !== null && sheet.steps.some((s) => s.id === step) ? step : sheet.next,
    notes: estimate.riskNotes,
    checkIn: bench.checkIn,
    readings: bench.readings,
    findings: bench.findings.map((f) => ({
      id: f.id,
      place: f.place,
      text: text(f.text),
      ...(f.photo ? { photoSrc: paths.docketPhoto(desk.id, f.photo) } : {}),
    })),
    removals: bench.removals,
    extras: extras.map((e) => ({
      extra: e.extra,
      text: text(e.text),
      minutes: e.minutes,
      total: e.amount + e.tax,
      within: e.within,
      decision: e.decision?.decision ?? null,
    })),
    notesText: bench.notes.map((n) => ({ id: n.id, text: text(n.text) })),
  }
}

const benchPage = (
  call: Any,
  desk: Desk,
  stored: Stored,
  step: string | null,
  problem?: Problem,
): Outcome =>
  page(
    <BenchPage
      frame={frameOf(call)}
      view={benchView(call, desk, stored, step)}
      once={onceOf(call)}
      {...(problem ? { errors: fieldErrors(call, problem), kept: keptOf(formOf(call)) } : {})}
    />,
    problem ? 422 : 200,
  )

/** A line typed on a page of the server: its own device name, numbered after what is there. */
const pageLine = (call: Any, desk: Desk, kind: string, body: Record<string, unknown>) => ({
  id: call.newId(),
  kind,
  body: body as never,
  device: 'page',
  n: desk.docket.rev + 1,
  at: call.now,
})

const handoverPage = (call: Any, desk: Desk, stored: Stored, problem?: Problem): Outcome => {
  const { sheet, revision } = sheetFor(desk, stored, yearOf(call.now))
  const { words, profile } = call.studio
  const account = accountOf(desk, revision)
  const net = decimalFromMinor(account.net, profile.currency)
  const agreed = desk.docket.extras.filter((e) => e.decision?.decision === 'agree')
  return page(
    <HandoverPage
      frame={frameOf(call, { who: desk.docket.reference ?? '' })}
      id={desk.id}
      reference={desk.docket.reference ?? ''}
      car={desk.head?.title ?? ''}
      blockers={blockersOf(sheet.checks, desk.docket.extras, desk.docket.bench.removals)}
      account={{
        lines: [
          ...revision.offer.lines.map((l) => ({ name: lineText(l, words), amount: l.amount })),
          ...agreed.map((e) => ({ name: desk.texts.get(e.text.text) ?? '', amount: e.amount })),
        ],
        net: account.net,
        tax: account.tax,
        total: account.total,
      }}
      quotedTotal={revision.offer.total}
      netText={net.ok ? net.value : ''}
      once={onceOf(call)}
      {...(problem ? { errors: fieldErrors(call, problem), kept: keptOf(formOf(call)) } : {})}
    />,
    problem ? 422 : 200,
  )
}

export const benchPageRoutes: readonly Route[] = [
  route({
    id: 'page.bench',
    face: 'page',
    method: 'GET',
    path: '/bench/:id',
    rights: 'bench',
    summary: 'The job sheet, at the next step or at a chosen one.',
    query: z.object({ step: z.exactOptional(z.string().max(64)) }),
    answers: { 200: 'other' },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      return benchPage(call, desk, call.loaded.estimates, call.query.step ?? null)
    },
  }),
  route({
    id: 'page.bench.line',
    face: 'page',
    method: 'POST',
    path: '/bench/:id/lines',
    rights: 'bench',
    summary: 'Write one line of the bench.',
    body: 'form',
    answers: { 303: null },
    again: true,
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      const kind = form.get('kind') ?? ''
      return orAgain(
        () => {
          const body = benchBody(kind, form)
          const done = addBenchLines(call, desk, [pageLine(call, desk, kind, body)])
          return seeOther(paths.bench(desk.id), { writes: done.writes })
        },
        (problem) => benchPage(call, desk, call.loaded.estimates, form.get('step'), problem),
      )
    },
  }),
  route({
    id: 'page.bench.finding',
    face: 'page',
    method: 'POST',
    path: '/bench/:id/findings',
    rights: 'bench',
    summary: 'Write down what was found, with a picture.',
    body: 'multipart',
    answers: { 303: null },
    again: true,
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      return orAgain(
        async () => {
          const place = textOf(form, 'place')?.slice(0, 80)
          const text = textOf(form, 'text')?.slice(0, 2000)
          if (!place) throw invalid([{ pointer: '/place', code: 'ERR_REQUIRED' }])
          if (!text) throw invalid([{ pointer: '/text', code: 'ERR_REQUIRED' }])
          const photo = form.file('file') ? await addPhoto(call, desk, subject(form)) : null
          const base = photo ? { ...desk, lines: [...desk.lines, ...photo.placed] } : desk
          const line = pageLine(call, base, 'found', {
            place,
            text,
            ...(photo ? { photo: photo.id } : {}),
          })
          const done = addBenchLines(call, base, [line])
          return seeOther(`${paths.bench(desk.id)}#findings`, {
            writes: [...(photo?.writes ?? []), ...done.writes],
            ...(photo ? { before: photo.before, undo: photo.undo } : {}),
          })
        },
        (problem) => benchPage(call, desk, call.loaded.estimates, null, problem),
      )
    },
  }),
  route({
    id: 'page.bench.extra',
    face: 'page',
    method: 'POST',
    path: '/bench/:id/extras',
    rights: 'bench',
    summary: 'Ask the customer about extra work.',
    body: 'form',
    answers: { 303: null },
    again: true,
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      return orAgain(
        () => {
          const text = textOf(form, 'text')?.slice(0, 2000)
          const minutes = wholeOf(form, 'minutes')
          if (!text) throw invalid([{ pointer: '/text', code: 'ERR_REQUIRED' }])
          if (minutes === undefined || !(minutes >= 0 && minutes <= 10_000))
            throw invalid([{ pointer: '/minutes', code: 'ERR_NUMBER' }])
          const done = askExtra(call, desk, { text, minutes })
          return seeOther(`${paths.bench(desk.id)}#findings`, { writes: done.writes })
        },
        (problem) => benchPage(call, desk, call.loaded.estimates, null, problem),
      )
    },
  }),
  route({
    id: 'page.handover',
    face: 'page',
    method: 'GET',
    path: '/bench/:id/handover',
    rights: 'bench',
    summary: 'What still stands in the way, and the account.',
    answers: { 200: 'other' },
    load,
    act: (call) => handoverPage(call, openDesk(call.loaded), call.loaded.estimates),
  }),
  route({
    id: 'page.handover.done',
    face: 'page',
    method: 'POST',
    path: '/bench/:id/handover',
    rights: 'bench',
    summary: 'Hand the car over.',
    body: 'form',
    answers: { 303: null },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      return orAgain(
        () => {
          const { sheet, revision } = sheetFor(desk, call.loaded.estimates, yearOf(call.now))
          const mileage = wholeOf(form, 'mileage')
          if (Number.isNaN(mileage)) throw invalid([{ pointer: '/mileage', code: 'ERR_NUMBER' }])
          const done = handOver(
            call,
            desk,
            {
              mileage,
              name: textOf(form, 'name')?.slice(0, 200),
              paid: money(form.get('paid'), 'paid', call.studio.profile.currency),
              net: money(form.get('net'), 'net', call.studio.profile.currency),
              open: (textOf(form, 'open') ?? '')
                .split('\n')
                .map((s) => s.trim().slice(0, 200))
                .filter(Boolean)
                .slice(0, 20),
            },
            sheet,
            revision,
          )
          return seeOther(paths.docket(desk.id), { writes: done.writes })
        },
        (problem) => handoverPage(call, desk, call.loaded.estimates, problem),
      )
    },
  }),
]

const money = (typed: string | null, field: string, currency: string): number | undefined => {
  const text = typed?.trim() ?? ''
  if (text === '') return undefined
  const minor = minorFromDecimal(typedNumber(text) ?? text, currency)
  if (!minor.ok || minor.value < 0) throw invalid([{ pointer: `/${field}`, code: 'ERR_NUMBER' }])
  return minor.value
}

const subject = (form: ReturnType<typeof formOf>): ReturnType<typeof formOf> => ({
  ...form,
  get: (name) => (name === 'subject' ? 'finding' : form.get(name)),
})
