import { parseDate } from '../kernel/calendar'
import { err, ok, type Result } from '../kernel/result'
import { checkVin } from '../kernel/vin'
import { type Issue, issue } from './issue'
import { parseContact } from './parse-contact'
import { parseText } from './parse-text'
import type { Kind, Question } from './question'
import { toBase } from './units'

type Parsed = Result<unknown, Issue[]>
type Parse = (q: Question<unknown>, json: unknown) => Parsed

const MOST_PHOTOS = 20
const MOST_MONEY = 1_000_000_000
const PHOTO_ID = /^[A-Za-z0-9_-]{1,64}$/

const no = (code: string, params?: Issue['params']): Parsed => err([issue(code, '/value', params)])

const choice: Parse = (q, json) =>
  typeof json === 'string' && q.options?.includes(json) ? ok(json) : no('ERR_NOT_AN_OPTION')

const multi: Parse = (q, json) => {
  if (!Array.isArray(json)) return no('ERR_NOT_A_LIST')
  const options = q.options ?? []
  const issues = json.flatMap((v, i) =>
    options.includes(v) ? [] : [issue('ERR_NOT_AN_OPTION', `/value/${i}`)],
  )
  if (new Set(json).size !== json.length) issues.push(issue('ERR_TWICE'))
  if (json.length > 1 && q.alone?.some((a) => json.includes(a))) issues.push(issue('ERR_ALONE'))
  return issues.length > 0 ? err(issues) : ok(options.filter((o) => json.includes(o)))
}

const number: Parse = (q, json) => {
  const whole = typeof json !== 'object' || json === null || Array.isArray(json)
  const given: { amount?: unknown; unit?: unknown } = whole ? { amount: json } : json
  const unit = given.unit ?? q.unit
  const known = q.units ?? (q.unit === undefined ? [] : [q.unit])
  const issues: Issue[] = []
  const at = whole ? '/value' : '/value/amount'
  if (typeof given.amount !== 'number' || !Number.isFinite(given.amount))
    issues.push(issue('ERR_NOT_A_NUMBER', at))
  if (unit !== undefined && !known.includes(unit as string))
    issues.push(issue('ERR_UNIT', '/value/unit'))
  if (issues.length > 0) return err(issues)
  const amount = given.amount as number
  const base = unit === undefined ? amount : toBase(amount, unit as string)
  if (base === undefined) return err([issue('ERR_UNIT', '/value/unit')])
  if ((q.min !== undefined && base < q.min) || (q.max !== undefined && base > q.max))
    return err([issue('ERR_OUT_OF_RANGE', at, { min: q.min ?? 0, max: q.max ?? 0 })])
  return ok(base + 0) // never −0
}

const wholeYear: Parse = (q, json) => {
  if (typeof json !== 'number' || !Number.isSafeInteger(json)) return no('ERR_NOT_A_YEAR')
  const min = q.min ?? 1900
  const max = q.max ?? 2100
  return json < min || json > max ? no('ERR_YEAR_RANGE', { min, max }) : ok(json)
}

const money: Parse = (_q, json) =>
  typeof json === 'number' && Number.isSafeInteger(json) && json >= 0 && json <= MOST_MONEY
    ? ok(json)
    : no('ERR_NOT_MONEY')

const date: Parse = (_q, json) => {
  if (typeof json !== 'string') return no('ERR_DATE_FORMAT')
  const parsed = parseDate(json)
  if (parsed.ok) return ok(json)
  return no(parsed.error === 'date-format' ? 'ERR_DATE_FORMAT' : 'ERR_NO_SUCH_DAY')
}

const vin: Parse = (_q, json) => {
  if (typeof json !== 'string') return no('ERR_NOT_TEXT')
  const checked = checkVin(json)
  if (checked.ok) return ok(checked.value.vin)
  return no(checked.error === 'vin-length' ? 'ERR_VIN_LENGTH' : 'ERR_VIN_CHARACTER')
}

const photos: Parse = (_q, json) => {
  if (!Array.isArray(json)) return no('ERR_NOT_A_LIST')
  const issues = json.flatMap((v, i) =>
    typeof v === 'string' && PHOTO_ID.test(v) ? [] : [issue('ERR_PHOTO', `/value/${i}`)],
  )
  if (new Set(json).size !== json.length) issues.push(issue('ERR_TWICE'))
  if (json.length > MOST_PHOTOS) issues.push(issue('ERR_PHOTOS', '/value', { most: MOST_PHOTOS }))
  return issues.length > 0 ? err(issues) : ok([...json])
}

const PARSE: Readonly<Record<Kind, Parse>> = {
  choice,
  multi,
  yesNo: (_q, json) => (typeof json === 'boolean' ? ok(json) : no('ERR_NOT_YES_NO')),
  number,
  year: wholeYear,
  date,
  money,
  text: (_q, json) => parseText(json),
  vin,
  photos,
  contact: (_q, json) => parseContact(json),
}

/**
 * The value of an answer as it is stored: options in the order of the question, numbers in its base
 * unit, text trimmed and NFC, a VIN without blanks (a wrong check digit is no fault here). Null is
 * "left out" and fits optional questions only. Errors: every fault found, as issues.
 */
export const parseValue = (q: Question<unknown>, json: unknown): Result<unknown, Issue[]> => {
  if (json === null || json === undefined) return q.optional ? ok(null) : no('ERR_MISSING')
  const blank = typeof json === 'string' && json.trim() === '' && q.kind !== 'choice'
  if (blank) return q.optional ? ok(null) : no('ERR_MISSING')
  const parsed = PARSE[q.kind](q, json)
  return parsed.ok && parsed.value === null && !q.optional ? no('ERR_MISSING') : parsed
}
