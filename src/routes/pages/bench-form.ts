import { typedNumber } from '../../intake/typed-number'
import { invalid } from '../http/problem'
import type { Form } from '../route'
import { typedIn, wholeOf } from './page'

const NUMBERS = new Set(['minutes', 'sets', 'mileage', 'keys'])
const FIELDS: Readonly<Record<string, readonly string[]>> = {
  'checked-in': ['mileage', 'fuel', 'keys', 'name', 'notes'],
  began: ['step'],
  'broke-off': ['step'],
  done: ['step', 'minutes'],
  unreadable: ['panel', 'why'],
  polished: ['panel', 'sequence', 'sets', 'machine', 'pad', 'abrasive', 'speed'],
  removed: ['item', 'place', 'thickness', 'stored'],
  refitted: ['removal'],
  checked: ['check', 'why'],
  noted: ['text'],
  struck: ['line', 'why'],
}

/** Readings as typed or pasted: numbers apart by spaces, commas with a space, semicolons or lines. */
const readings = (typed: string): readonly number[] | null => {
  const parts = typed.split(/[\s;]+|,\s+/).filter(Boolean)
  const numbers = parts.map((p) => {
    const plain = typedNumber(p.replace(/,$/, ''), 1)
    return plain === undefined ? Number.NaN : Number(plain)
  })
  return numbers.length > 0 && numbers.every((n) => Number.isFinite(n) && n >= 0) ? numbers : null
}

/** The body of a bench line from its form; fields left empty are left out. Throws 422. */
export const benchBody = (kind: string, form: Form): Record<string, unknown> => {
  if (kind === 'reading') {
    const values = readings(form.get('values') ?? '')
    if (values === null) throw invalid([{ pointer: '/values', code: 'ERR_NUMBER' }])
    return {
      panel: form.get('panel') ?? '',
      kind: form.get('of') === 'reference' ? 'reference' : 'panel',
      values,
      ...(form.get('probe') ? { probe: form.get('probe') } : {}),
      ...(form.get('overFilm') === null ? {} : { overFilm: true }),
    }
  }
  const body: Record<string, unknown> = {}
  for (const field of FIELDS[kind] ?? []) {
    if (NUMBERS.has(field)) {
      const n = wholeOf(form, field)
      if (Number.isNaN(n)) throw invalid([{ pointer: `/${field}`, code: 'ERR_NUMBER' }])
      if (n !== undefined) body[field] = n
    } else {
      const text = typedIn(form, field)
      if (text !== undefined) body[field] = text
    }
  }
  if (kind === 'done' && body.minutes !== undefined) body.entered = true
  if (kind === 'checked-in') body.consents = form.all('consents[]')
  if (kind === 'checked' && form.get('waived') !== null) {
    body.waived = true
    if (body.why === undefined) throw invalid([{ pointer: '/why', code: 'ERR_REQUIRED' }])
  }
  return body
}
