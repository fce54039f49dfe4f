import { formLines } from '../../pages/bench/form-lines'
import { agreedWork, type StoredEstimates } from '../acts/agreed'
import { paintNow } from '../acts/bench-guards'
import type { BenchLine } from '../acts/bench-lines'
import type { Desk } from '../acts/desk'
import { replanned } from '../acts/replanning'
import { invalid } from '../http/problem'
import type { Form } from '../route'
import { pageLine } from './bench-render'
import type { Any } from './page'

/** Who is there, with when the rest is ready by that. */
const crewBody = (
  call: Any,
  desk: Desk,
  stored: StoredEstimates,
  body: Readonly<Record<string, unknown>>,
): Record<string, unknown> => {
  const { estimate } = agreedWork(desk, stored)
  const crew = { people: Number(body.people), noLifting: body.noLifting === true }
  const { ready } = replanned(call, desk, estimate, crew)
  return ready === null ? { ...body } : { ...body, readyLikely: ready }
}

/**
 * The lines a form of the sheet writes: one, or a row each of a pasted table. Throws 422 for what is
 * typed wrong and for a set the panel does not allow.
 */
export const pageLines = (
  call: Any,
  desk: Desk,
  stored: StoredEstimates,
  form: Form,
): readonly BenchLine[] => {
  const lines = formLines(paintNow(call, desk), form, call.studio.words)
  if (!lines.ok) throw invalid(lines.error)
  return lines.value.map(({ kind, body }, i) => ({
    ...pageLine(
      call,
      desk,
      kind,
      kind === 'crew-changed' ? crewBody(call, desk, stored, body) : { ...body },
    ),
    n: desk.docket.rev + 1 + i,
  }))
}
