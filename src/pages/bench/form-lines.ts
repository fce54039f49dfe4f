import { benchBody, type FormFault, type FormValues } from '../../docket/bench-form'
import { panelsNow } from '../../jobsheet/panels-now'
import { pastedReadings } from '../../jobsheet/pasted'
import { type PaintNow, setFaults } from '../../jobsheet/set-faults'
import { err, ok, type Result } from '../../kernel/result'
import type { Words } from '../../words/render'

export type FormLine = {
  readonly kind: string
  readonly body: Readonly<Record<string, unknown>>
}
type Lines = Result<readonly FormLine[], readonly FormFault[]>

/** A table of readings as lines, one a row; each line that cannot be read is named. */
const pastedLines = ({ paint, bench, limits }: PaintNow, form: FormValues, words: Words): Lines => {
  const panels = panelsNow(paint, bench, limits).map(({ panel }) => ({
    panel,
    name: words.say(`panel.${panel}`),
  }))
  const rows = pastedReadings(form.get('columns') ?? '', panels, words.say('page.paste.reference'))
  if (!rows.ok)
    return err(
      rows.error.map(({ line, code, text }) => ({
        pointer: '/columns',
        code,
        params: { line, text },
      })),
    )
  const probe = form.get('probe')
  return ok(
    rows.value.map((row) => ({ kind: 'reading', body: { ...row, ...(probe ? { probe } : {}) } })),
  )
}

/**
 * The lines a form of the sheet writes: one, or a row each of a pasted table; or every fault of what
 * is typed, a set the panel does not allow among them. The same on the server and without a signal.
 */
export const formLines = (now: PaintNow, form: FormValues, words: Words): Lines => {
  const kind = form.get('kind') ?? ''
  if (kind === 'pasted') return pastedLines(now, form, words)
  const body = benchBody(kind, form)
  if (!body.ok) return body
  const beyond = kind === 'polished' ? setFaults(now, body.value, form.get('ran') !== null) : []
  return beyond.length > 0 ? err(beyond) : ok([{ kind, body: body.value }])
}
