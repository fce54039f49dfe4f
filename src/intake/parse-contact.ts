import { err, ok, type Result } from '../kernel/result'
import { type Issue, issue } from './issue'
import { parseText } from './parse-text'
import type { Contact } from './question'

const LONGEST_NAME = 120
/** RFC 5321 section 4.5.3.1: local part 64, and a path of 256 with its angle brackets leaves 254. */
const LONGEST_EMAIL = 254
const LONGEST_LOCAL = 64
/** ITU-T E.164: at most 15 digits with the country code. Fewer than 5 reach nobody (own estimate). */
const MOST_DIGITS = 15
const LEAST_DIGITS = 5

// The dot-atom form of RFC 5322 with letters of any script, a domain of at least two labels (RFC 1035).
const EMAIL =
  /^[\p{L}\p{N}!#$%&'*+/=?^_`{|}~-]+(\.[\p{L}\p{N}!#$%&'*+/=?^_`{|}~-]+)*@([\p{L}\p{N}]([\p{L}\p{N}-]{0,61}[\p{L}\p{N}])?\.)+[\p{L}\p{N}]([\p{L}\p{N}-]{0,61}[\p{L}\p{N}])$/u
const PHONE = /^\+?[0-9 ()\-./]+$/

type Part = Result<string | null, Issue[]>

const part = (json: unknown, pointer: string, most: number): Part =>
  json === undefined || json === null ? ok(null) : parseText(json, most, pointer)

const email = (json: unknown): Part => {
  const text = part(json, '/value/email', LONGEST_EMAIL)
  if (!text.ok || text.value === null) return text
  const local = text.value.slice(0, text.value.lastIndexOf('@'))
  return EMAIL.test(text.value) && [...local].length <= LONGEST_LOCAL
    ? text
    : err([issue('ERR_EMAIL', '/value/email')])
}

const phone = (json: unknown): Part => {
  const text = part(json, '/value/phone', 40)
  if (!text.ok || text.value === null) return text
  const digits = text.value.replace(/\D/g, '').length
  if (!PHONE.test(text.value)) return err([issue('ERR_PHONE_CHARACTER', '/value/phone')])
  return digits >= LEAST_DIGITS && digits <= MOST_DIGITS
    ? text
    : err([issue('ERR_PHONE_DIGITS', '/value/phone', { least: LEAST_DIGITS, most: MOST_DIGITS })])
}

/**
 * `{ name, email?, phone? }`, one of the two ways at least; empty parts count as missing. Errors:
 * ERR_NOT_CONTACT, ERR_NAME_MISSING, ERR_REACH_MISSING, ERR_EMAIL, ERR_PHONE_CHARACTER,
 * ERR_PHONE_DIGITS, those of a text, and ERR_UNKNOWN_PART; every fault is reported.
 */
export const parseContact = (json: unknown): Result<Contact, Issue[]> => {
  if (typeof json !== 'object' || json === null || Array.isArray(json))
    return err([issue('ERR_NOT_CONTACT')])
  const given = json as Readonly<Record<string, unknown>>
  const name = part(given.name, '/value/name', LONGEST_NAME)
  const mail = email(given.email)
  const call = phone(given.phone)
  const issues = [name, mail, call].flatMap((p) => (p.ok ? [] : p.error))
  if (name.ok && name.value === null) issues.push(issue('ERR_NAME_MISSING', '/value/name'))
  if (name.ok && name.value?.includes('\n'))
    issues.push(issue('ERR_CONTROL_CHARACTER', '/value/name'))
  if (mail.ok && call.ok && mail.value === null && call.value === null)
    issues.push(issue('ERR_REACH_MISSING', '/value/email'))
  if (Object.keys(given).some((k) => !['name', 'email', 'phone'].includes(k)))
    issues.push(issue('ERR_UNKNOWN_PART'))
  if (issues.length > 0 || !name.ok || !mail.ok || !call.ok || name.value === null)
    return err(issues)
  return ok({
    name: name.value,
    ...(mail.value !== null && { email: mail.value }),
    ...(call.value !== null && { phone: call.value }),
  })
}
