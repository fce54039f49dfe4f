import { benchBody } from '../../docket/bench-form'
import { panelsNow } from '../../jobsheet/panels-now'
import { pastedReadings } from '../../jobsheet/pasted'
import { paintCaseOf } from '../../quote/paint-of'
import { agreedWork, type StoredEstimates } from '../acts/agreed'
import { assertMayRun } from '../acts/bench-guards'
import type { BenchLine } from '../acts/bench-lines'
import type { Desk } from '../acts/desk'
import { replanned } from '../acts/replanning'
import { invalid } from '../http/problem'
import type { Form } from '../route'
import { pageLine, yearOf } from './bench-render'
import type { Any } from './page'

/** A table of readings as lines, one a row. Throws 422 naming each line that cannot be read. */
const pastedLines = (call: Any, desk: Desk, form: Form): readonly BenchLine[] => {
  const { words } = call.studio
  const panels = panelsNow(
    paintCaseOf(desk.answers, yearOf(call.now)),
    desk.docket.bench,
    call.studio.engine.limits,
  ).map(({ panel }) => ({ panel, name: words.say(`panel.${panel}`) }))
  const rows = pastedReadings(form.get('columns') ?? '', panels, words.say('page.paste.reference'))
  if (!rows.ok)
    throw invalid(
      rows.error.map(({ line, code, text }) => ({
        pointer: '/columns',
        code,
        params: { line, text },
      })),
    )
  const probe = form.get('probe')
  return rows.value.map((row, i) => ({
    ...pageLine(call, desk, 'reading', { ...row, ...(probe ? { probe } : {}) }),
    n: desk.docket.rev + 1 + i,
  }))
}

/** Who is there, with when the rest is ready by that. */
const crewBody = (
  call: Any,
  desk: Desk,
  stored: StoredEstimates,
  body: Record<string, unknown>,
): Record<string, unknown> => {
  const { estimate } = agreedWork(desk, stored)
  const crew = { people: Number(body.people), noLifting: body.noLifting === true }
  const { ready } = replanned(call, desk, estimate, crew)
  return ready === null ? body : { ...body, readyLikely: ready }
}

/**
 * The lines a form of the sheet writes: one, or a row each of a pasted table. Throws 422 for what is
 * typed wrong and for a set the panel does not allow.
 */
export const pageLines = (
  call: Any,
  desk: Desk,
  stored: StoredEstimates,
  kind: string,
  form: Form,
): readonly BenchLine[] => {
  if (kind === 'pasted') return pastedLines(call, desk, form)
  const body = benchBody(kind, form)
  if (!body.ok) throw invalid(body.error)
  if (kind === 'polished') assertMayRun(call, desk, body.value, form.get('ran') !== null)
  const given = kind === 'crew-changed' ? crewBody(call, desk, stored, body.value) : body.value
  return [pageLine(call, desk, kind, given)]
}
