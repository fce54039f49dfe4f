import { typedNumber } from '../intake/typed-number'
import { typedWhole } from '../intake/typed-whole'
import { err, ok, type Result } from '../kernel/result'
import type { LineKind } from './kinds'

/** What a form holds, however it was sent: one value of a name, or all of them. */
export type FormValues = {
  readonly get: (name: string) => string | null
  readonly all: (name: string) => readonly string[]
}

export type FormFault = {
  readonly pointer: string
  readonly code: string
  readonly params?: Readonly<Record<string, number>>
}

type Field = {
  readonly name: string
  /** Must be given; a line without it says nothing. */
  readonly must?: true
  /** Longest text, in characters; absent: a whole number. */
  readonly text?: number
  /** Smallest and largest whole number. */
  readonly from?: number
  readonly to?: number
}

const text = (name: string, most: number, must?: true): Field => ({
  name,
  text: most,
  ...(must ? { must } : {}),
})
const whole = (name: string, from: number, to: number, must?: true): Field => ({
  name,
  from,
  to,
  ...(must ? { must } : {}),
})

/** Characters of what is typed into a line apart from it. */
export const MOST_TYPED = 4000
const id = (name: string): Field => text(name, 64, true)

/** The fields of each kind's form, as the line's body takes them (`kinds.ts`; a test holds them together). */
const FIELDS: Readonly<Partial<Record<LineKind, readonly Field[]>>> = {
  'checked-in': [
    whole('mileage', 0, 999_999_999),
    text('fuel', 40),
    whole('keys', 0, 20),
    text('name', MOST_TYPED),
    text('notes', MOST_TYPED),
  ],
  began: [id('step')],
  'broke-off': [id('step')],
  done: [id('step'), whole('minutes', 0, 100_000)],
  unreadable: [id('panel'), text('why', 200, true)],
  polished: [
    id('panel'),
    id('sequence'),
    whole('sets', 1, 40, true),
    text('machine', 80),
    text('pad', 80),
    text('abrasive', 80),
    text('speed', 40),
  ],
  found: [text('place', 80, true), text('text', 2000, true)],
  removed: [
    text('item', 80, true),
    text('place', 80, true),
    text('thickness', 40),
    text('stored', 80),
  ],
  refitted: [id('removal')],
  checked: [id('check'), text('why', MOST_TYPED)],
  noted: [text('text', MOST_TYPED, true)],
  struck: [id('line'), text('why', 300, true)],
}

/** Kinds of lines a form of the sheet writes. */
export const FORM_KINDS = ['reading', ...Object.keys(FIELDS)] as readonly LineKind[]

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
  if (values === null) return fault('ERR_NUMBER')
  if (values.length > MOST_VALUES || values.some((v) => v > MOST_UM)) return fault('ERR_TOO_LARGE')
  return ok({
    panel: form.get('panel') ?? '',
    kind: form.get('of') === 'reference' ? 'reference' : 'panel',
    values,
    ...(form.get('probe') ? { probe: form.get('probe') } : {}),
    ...(form.get('overFilm') === null ? {} : { overFilm: true }),
  })
}

const faultOf = (field: Field, typed: string): Omit<FormFault, 'pointer'> | null => {
  if (typed === '') return field.must ? { code: 'ERR_REQUIRED' } : null
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
  const body: Record<string, unknown> = {}
  const faults: FormFault[] = []
  for (const field of FIELDS[kind as LineKind] ?? []) {
    const typed = form.get(field.name)?.trim() ?? ''
    const fault = faultOf(field, typed)
    if (fault) faults.push({ pointer: `/${field.name}`, ...fault })
    else if (typed !== '') body[field.name] = field.text === undefined ? typedWhole(typed) : typed
  }
  if (kind === 'done' && body.minutes !== undefined) body.entered = true
  if (kind === 'checked-in') body.consents = form.all('consents[]')
  if (kind === 'checked' && form.get('waived') !== null) {
    body.waived = true
    if (body.why === undefined) faults.push({ pointer: '/why', code: 'ERR_REQUIRED' })
  }
  return faults.length > 0 ? err(faults) : ok(body)
}
