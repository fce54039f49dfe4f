import * as z from 'zod'
import { benchBody } from '../../docket/bench-form'
import { paths } from '../../pages/paths'
import { addBenchLines } from '../acts/bench-lines'
import { openDesk } from '../acts/desk'
import { askExtra } from '../acts/extras'
import { addPhoto } from '../acts/photo'
import { invalid } from '../http/problem'
import { type Route, route } from '../route'
import { benchPage, load, pageLine, subject } from './bench-render'
import { formOf, orAgain, seeOther, textOf, wholeOf } from './page'

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
          if (!body.ok) throw invalid(body.error)
          const done = addBenchLines(call, desk, [pageLine(call, desk, kind, body.value)])
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
          const place = textOf(form, 'place', 80)
          const text = textOf(form, 'text', 2000)
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
          const text = textOf(form, 'text', 2000)
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
]
