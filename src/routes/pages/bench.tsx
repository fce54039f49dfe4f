import * as z from 'zod'
import { benchBody } from '../../docket/bench-form'
import { paths } from '../../pages/paths'
import { addBenchLines } from '../acts/bench-lines'
import { decideExtra } from '../acts/deciding'
import { openDesk } from '../acts/desk'
import { askExtra } from '../acts/extras'
import { addPhoto } from '../acts/photo'
import { invalid } from '../http/problem'
import { type Route, route } from '../route'
import { pageLines } from './bench-page-lines'
import { benchForm, benchPage, load, pageLine, subject } from './bench-render'
import { seeOther, textOf, wholeOf } from './page'

/** The part of the sheet each kind of line stands in, to come back to. */
const PART: Readonly<Record<string, string>> = {
  found: 'findings',
  removed: 'removals',
  refitted: 'removals',
  reading: 'reading',
  pasted: 'reading',
  unreadable: 'reading',
  'gauge-checked': 'reading',
  polished: 'panels',
  allowed: 'panels',
  'film-answered': 'findings',
  'crew-changed': 'day',
  'stayed-overnight': 'day',
  wanted: 'parts',
  supplied: 'parts',
  recorded: 'recorded',
  checked: 'checks',
}

/** Where the sheet goes on after a line: at the step it was written at, in the part it belongs to. */
const backTo = (id: string, kind: string, step: string | null): string => {
  const at = step !== null && kind === 'refitted' ? paths.benchStep(id, step) : paths.bench(id)
  return kind in PART && !(step !== null && kind === 'refitted') ? `${at}#${PART[kind]}` : at
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
    act: benchForm((call, desk, form) => {
      const lines = pageLines(call, desk, call.loaded.estimates, form)
      const done = addBenchLines(call, desk, lines)
      const to = backTo(desk.id, form.get('kind') ?? '', form.get('step'))
      return seeOther(to, { writes: done.writes })
    }),
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
    act: benchForm(async (call, desk, form) => {
      const kind = form.get('kind') === 'removed' ? 'removed' : 'found'
      const body = benchBody(kind, form)
      if (!body.ok) throw invalid(body.error)
      const photo = form.file('file') ? await addPhoto(call, desk, subject(form)) : null
      const base = photo ? { ...desk, lines: [...desk.lines, ...photo.placed] } : desk
      const line = pageLine(call, base, kind, {
        ...body.value,
        ...(photo ? { photo: photo.id } : {}),
      })
      const done = addBenchLines(call, base, [line])
      return seeOther(backTo(desk.id, kind, form.get('step')), {
        writes: [...(photo?.writes ?? []), ...done.writes],
        ...(photo ? { before: photo.before, undo: photo.undo } : {}),
      })
    }),
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
    act: benchForm((call, desk, form) => {
      const text = textOf(form, 'text', 2000)
      const minutes = wholeOf(form, 'minutes')
      if (!text) throw invalid([{ pointer: '/text', code: 'ERR_REQUIRED' }])
      if (minutes === undefined || !(minutes >= 0 && minutes <= 10_000))
        throw invalid([{ pointer: '/minutes', code: 'ERR_NUMBER' }])
      const finding = desk.docket.bench.findings.find((f) => f.id === form.get('finding'))?.id
      const ifNot = textOf(form, 'ifNot', 500)
      const done = askExtra(call, desk, { text, minutes, finding, ifNot })
      return seeOther(`${paths.bench(desk.id)}#findings`, { writes: done.writes })
    }),
  }),
  route({
    id: 'page.bench.extra-decision',
    face: 'page',
    method: 'POST',
    path: '/bench/:id/extras/:extra/decision',
    rights: 'bench',
    summary: 'Write down what the customer said of extra work by phone.',
    body: 'form',
    answers: { 303: null },
    load,
    act: benchForm((call, desk, form) => {
      const name = textOf(form, 'name', 200)
      if (!name) throw invalid([{ pointer: '/name', code: 'ERR_REQUIRED' }])
      const decision = form.get('decision') === 'agree' ? 'agree' : 'refuse'
      const extra = call.params.extra ?? ''
      const done = decideExtra(call, desk, extra, { decision, name }, 'phone')
      return seeOther(`${paths.bench(desk.id)}#findings`, { writes: done.writes })
    }),
  }),
]
