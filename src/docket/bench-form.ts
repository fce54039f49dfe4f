import { typedNumber } from '../intake/typed-number'
import { typedWhole } from '../intake/typed-whole'
import { parseDay } from '../kernel/calendar'
import { err, ok, type Result } from '../kernel/result'
import { FIELDS, type Field, MOST_TYPED } from './bench-fields'
import type { LineKind } from './kinds'

/** What a form holds, however it was sent: one value of a name, or all of them. */
export type FormValues = {
  readonly get: (name: string) => string | null
  readonly all: (name: string) => readonly string[]
}

export type FormFault = {
  readonly pointer: string
  readonly code: string
  readonly params?: Readonly<Record<string, string | number>>
}

/** Kinds of lines a form of the sheet writes. */
export const FORM_KINDS = [
  'reading',
  'gauge-checked',
  ...Object.keys(FIELDS),
] as readonly LineKind[]

export { MOST_TYPED }

/** Highest reading a gauge gives, µm, and the most at one place. */
const MOST_UM = 5000
const MOST_VALUES = 50

/** Readings as typed or pasted: numbers apart by spaces, commas with a space, semicolons or lines. */
const readings = (typed: string): readonly number[] | null => {
  const parts = typed.split(/[\s;]+|,\s+/).filter(Boolean)
  const numbers = parts.map((p) => {
    const plain = typedNumber(p.replace(/,$/, ''), 1)
    return plain === undefined ? Number.NaN : Number(plain)
  })
  return numbers.length > 0 && numbers.every((n) => Number.isFinite(n) && n >= 0) ? numbers : null
}

const readingBody = (form: FormValues): Result<Record<string, unknown>, readonly FormFault[]> => {
  const fault = (code: string) => err([{ pointer: '/values', code }])
  const values = readings(form.get('values') ?? '')
  const spot = form.get('spot')?.trim() ?? ''
  if (values === null) return fault('ERR_NUMBER')
  if (values.length > MOST_VALUES || values.some((v) => v > MOST_UM)) return fault('ERR_TOO_LARGE')
  if (spot.length > 40)
    return err([
      { pointer: '/spot', code: 'ERR_TOO_LONG', params: { most: 40, typed: spot.length } },
    ])
  return ok({
    panel: form.get('panel') ?? '',
    kind: form.get('of') === 'reference' ? 'reference' : 'panel',
    values,
    ...(form.get('probe') ? { probe: form.get('probe') } : {}),
    ...(form.get('overFilm') === null ? {} : { overFilm: true }),
    ...(spot === '' ? {} : { spot }),
  })
}

/** Pairs of what a shim is and what the gauge read on it: `nominal1`, `read1` and so on. */
export const SHIM_ROWS = [1, 2, 3] as const

const shimsBody = (form: FormValues): Result<Record<string, unknown>, readonly FormFault[]> => {
  const faults: FormFault[] = []
  const um = (name: string): number => {
    const plain = Number(typedNumber(form.get(name)?.trim() ?? '', 1) ?? Number.NaN)
    if (!(plain >= 0 && plain <= MOST_UM)) faults.push({ pointer: `/${name}`, code: 'ERR_NUMBER' })
    return plain
  }
  const shims = SHIM_ROWS.flatMap((n) => {
    const given = [form.get(`nominal${n}`), form.get(`read${n}`)].some((v) => v?.trim())
    return given ? [{ nominal: um(`nominal${n}`), read: um(`read${n}`) }] : []
  })
  if (shims.length === 0) return err([{ pointer: '/nominal1', code: 'ERR_REQUIRED' }])
  if (faults.length > 0) return err(faults)
  return ok({ shims, ...(form.get('probe') ? { probe: form.get('probe') } : {}) })
}

const isWhole = (f: Field): boolean => f.text === undefined && !f.of && !f.day

const faultOf = (field: Field, typed: string): Omit<FormFault, 'pointer'> | null => {
  if (typed === '') return field.must ? { code: 'ERR_REQUIRED' } : null
  if (field.of) return field.of.includes(typed) ? null : { code: 'ERR_VALUE' }
  if (field.tick) return null
  if (field.day) return parseDay(typed).ok ? null : { code: 'ERR_DATE_FORMAT' }
  if (field.text !== undefined)
    return typed.length <= field.text
      ? null
      : { code: 'ERR_TOO_LONG', params: { most: field.text, typed: typed.length } }
  const n = typedWhole(typed) ?? Number.NaN
  if (Number.isNaN(n)) return { code: 'ERR_NUMBER' }
  if (n < (field.from ?? 0)) return { code: 'ERR_TOO_SMALL' }
  return n > (field.to ?? n) ? { code: 'ERR_TOO_LARGE' } : null
}

/**
 * The body of a bench line from its form; fields left empty are left out. Gives every fault of the
 * form with the field it belongs to. The same on the server and on a device without a signal.
 */
export const benchBody = (
  kind: string,
  form: FormValues,
): Result<Record<string, unknown>, readonly FormFault[]> => {
  if (kind === 'reading') return readingBody(form)
  if (kind === 'gauge-checked') return shimsBody(form)
  const body: Record<string, unknown> = {}
  const faults: FormFault[] = []
  for (const field of FIELDS[kind as LineKind] ?? []) {
    const typed = form.get(field.name)?.trim() ?? ''
    const fault = faultOf(field, typed)
    if (fault) faults.push({ pointer: `/${field.name}`, ...fault })
    else if (field.tick) {
      if (field.tick === 'either' || typed !== '') body[field.name] = typed !== ''
    } else if (typed !== '') body[field.name] = isWhole(field) ? typedWhole(typed) : typed
  }
  if (kind === 'done' && body.minutes !== undefined) body.entered = true
  if (kind === 'checked-in') body.consents = form.all('consents[]')
  if (kind === 'checked' && form.get('waived') !== null) {
    body.waived = true
    if (body.why === undefined) faults.push({ pointer: '/why', code: 'ERR_REQUIRED' })
  }
  return faults.length > 0 ? err(faults) : ok(body)
}
