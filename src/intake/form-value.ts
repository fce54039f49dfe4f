import type { Kind, Question } from './question'
import { typedNumber } from './typed-number'

/** The part of posted form data this reads. */
export type PostedForm = {
  readonly get: (name: string) => string | null
  readonly getAll: (name: string) => readonly string[]
}

/** Major units as typed into whole minor units, without floating point; undefined when it does not fit. */
const typedMoney = (text: string, exponent: number): number | undefined => {
  const match = /^(\d{1,9})(?:\.(\d+))?$/.exec(typedNumber(text, exponent) ?? '')
  const cents = match?.[2] ?? ''
  if (match === null || cents.length > exponent) return undefined
  return Number(`${match[1]}${cents.padEnd(exponent, '0')}`)
}

type Read = (q: Question<unknown>, form: PostedForm, exponent: number) => unknown

const one: Read = (_q, form) => {
  const text = form.get('value')
  return text === null || text.trim() === '' ? undefined : text
}

// What cannot be read as a number goes on as the text it is: parsing names the fault.
const numeric: Read = (q, form, exponent) => {
  const text = one(q, form, exponent)
  if (typeof text !== 'string') return undefined
  const plain = typedNumber(text)
  return plain === undefined ? text : Number(plain)
}

const READ: Readonly<Record<Kind, Read>> = {
  choice: one,
  multi: (_q, form) => form.getAll('value[]'),
  yesNo: (q, form, e) => {
    const text = one(q, form, e)
    return text === 'true' ? true : text === 'false' ? false : text
  },
  number: (q, form, e) => {
    const amount = numeric(q, form, e)
    const unit = form.get('unit')
    return amount === undefined || !unit ? amount : { amount, unit }
  },
  year: numeric,
  date: one,
  money: (q, form, exponent) => {
    const text = one(q, form, exponent)
    return typeof text === 'string' ? (typedMoney(text, exponent) ?? text) : undefined
  },
  text: one,
  vin: one,
  photos: (_q, form) => form.getAll('value[]'),
  contact: (_q, form) => {
    const parts = ['name', 'email', 'phone'].flatMap((name) => {
      const text = form.get(name)
      return text === null || text.trim() === '' ? [] : [[name, text] as const]
    })
    return parts.length === 0 ? undefined : Object.fromEntries(parts)
  },
}

/**
 * Posted fields as the JSON an answer is sent in: `{ unsure: true }`, `{ value }`, or undefined when
 * nothing was filled in. An optional question left empty is `{ value: null }`; an empty field is
 * never 0. `exponent`: decimal places of the currency (ISO 4217), for money typed in major units.
 */
export const formValue = (
  q: Question<unknown>,
  form: PostedForm,
  exponent = 2,
): { readonly value: unknown } | { readonly unsure: true } | undefined => {
  if (q.unsureAllowed && form.get('unsure') !== null) return { unsure: true }
  const value = READ[q.kind](q, form, exponent)
  if (value === undefined) return q.optional ? { value: null } : undefined
  return { value }
}
