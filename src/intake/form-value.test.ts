import { describe, expect, it } from 'vitest'
import { formValue } from './form-value'
import { parseValue } from './parse'
import type { Question } from './question'
import { bestThing } from './questions/best-thing'
import { body } from './questions/body'
import { budget } from './questions/budget'
import { contact } from './questions/contact'
import { deadline } from './questions/deadline'
import { filmAge } from './questions/film-age'
import { mileage } from './questions/mileage'
import { readingsBefore } from './questions/readings-before'
import { services } from './questions/services'
import { wetElectrics } from './questions/wet-electrics'
import { year } from './questions/year'

const form = (...fields: readonly (readonly [string, string])[]): FormData => {
  const data = new FormData()
  for (const [name, text] of fields) data.append(name, text)
  return data
}
const posted = (data: FormData) => ({
  get: (name: string) => data.get(name) as string | null,
  getAll: (name: string) => data.getAll(name) as string[],
})
const read = (q: Question<unknown>, data: FormData, exponent?: number) =>
  formValue(q, posted(data), exponent)

describe('formValue', () => {
  it.each([
    [body, form(['value', 'van']), { value: 'van' }],
    [body, form(), undefined],
    [services, form(['value[]', 'paint'], ['value[]', 'glass']), { value: ['paint', 'glass'] }],
    [services, form(), { value: [] }],
    [wetElectrics, form(['value', 'true']), { value: true }],
    [wetElectrics, form(['value', 'false']), { value: false }],
    [wetElectrics, form(['unsure', '1'], ['value', 'false']), { unsure: true }],
    [readingsBefore, form(['unsure', '1']), undefined],
    [filmAge, form(['value', '12,5']), { value: 12.5 }],
    [filmAge, form(['value', '']), undefined],
    [filmAge, form(['value', ' ']), undefined],
    [filmAge, form(['value', 'ten']), { value: 'ten' }],
    [
      mileage,
      form(['value', '12,000'], ['unit', 'miles']),
      { value: { amount: 12_000, unit: 'miles' } },
    ],
    [mileage, form(['value', ''], ['unit', 'miles']), undefined],
    [year, form(['value', '1999']), { value: 1999 }],
    [deadline, form(['value', '']), { value: null }],
    [deadline, form(['value', '2026-05-31']), { value: '2026-05-31' }],
    [budget, form(['value', '']), { value: null }],
    [budget, form(['value', '1,250.5']), { value: 125_050 }],
    [budget, form(['value', '0.07']), { value: 7 }],
    [budget, form(['value', '1.005,001']), { value: '1.005,001' }],
    [budget, form(['value', '-5']), { value: '-5' }],
    [bestThing, form(['value', ' roof ']), { value: ' roof ' }],
    [
      contact,
      form(['name', 'Ada'], ['email', ''], ['phone', '12345']),
      { value: { name: 'Ada', phone: '12345' } },
    ],
    [contact, form(['name', '']), undefined],
  ])('reads %#', (q, data, expected) => {
    expect(read(q as Question<unknown>, data)).toEqual(expected)
  })

  it('takes money in the decimals of the currency (ISO 4217: none for JPY, three for KWD)', () => {
    expect(read(budget, form(['value', '1.250']), 0)).toEqual({ value: 1250 })
    expect(read(budget, form(['value', '12.5']), 0)).toEqual({ value: '12.5' })
    expect(read(budget, form(['value', '1.250']), 3)).toEqual({ value: 1250 })
    expect(read(budget, form(['value', '1']), 3)).toEqual({ value: 1000 })
  })

  it('leaves what it cannot read to parsing, which refuses it', () => {
    const faulty = read(filmAge, form(['value', 'ten']))
    expect(faulty && 'value' in faulty && parseValue(filmAge, faulty.value).ok).toBe(false)
  })
})
