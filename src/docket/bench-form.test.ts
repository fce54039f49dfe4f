import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { benchBody, FORM_KINDS, type FormValues } from './bench-form'
import { kinds } from './kinds'
import { typedApart } from './typed-apart'

const form = (fields: Readonly<Record<string, string | readonly string[]>>): FormValues => ({
  get: (name) => [fields[name] ?? null].flat()[0] ?? null,
  all: (name) => [fields[name] ?? []].flat(),
})

const FORMS = FORM_KINDS
const namesOf = (kind: (typeof FORMS)[number]): readonly string[] => [
  ...Object.keys(kinds[kind].shape),
  'of',
  'waived',
]

describe('benchBody', () => {
  it('never gives a body that the shape of its kind refuses, whatever is typed', () => {
    const typed = fc.oneof(
      fc.constantFrom('', ' ', '0', '7', '25', '124 131.5', '1e9', '99999999999', '-4', '12,5'),
      fc.string({ maxLength: 100 }),
      fc.integer({ min: 60, max: 5000 }).map((n) => 'x'.repeat(n)),
    )
    const filled = fc.constantFrom(...FORMS).chain((kind) => {
      const names = fc.constantFrom(...namesOf(kind))
      return fc.tuple(fc.constant(kind), fc.dictionary(names, typed, { maxKeys: 12 }))
    })
    let taken = 0
    fc.assert(
      fc.property(filled, ([kind, given]) => {
        // What a list on the page gives is not typed.
        const lists = {
          probe: 'magnetic',
          panel: 'roof',
          'consents[]': ['drive'],
        } as const
        const { spot: _, when: __, ...rest } = given as Record<string, string>
        const body = benchBody(kind, form({ ...rest, ...lists }))
        if (!body.ok) return
        taken += 1
        const { body: kept } = typedApart(kind, body.value, () => 'text-id')
        expect(kinds[kind].safeParse(kept).error?.issues).toBeUndefined()
      }),
      { numRuns: 3000, seed: 7 },
    )
    expect(taken).toBeGreaterThan(300)
  })

  it.each([
    ['reading', { values: '98 101 x' }, '/values', 'ERR_NUMBER'],
    ['reading', { values: '98 5001' }, '/values', 'ERR_TOO_LARGE'],
    ['reading', { values: '' }, '/values', 'ERR_NUMBER'],
    ['checked-in', { mileage: 'many' }, '/mileage', 'ERR_NUMBER'],
    ['checked-in', { keys: '21' }, '/keys', 'ERR_TOO_LARGE'],
    ['done', { step: 'wash', minutes: 'soon' }, '/minutes', 'ERR_NUMBER'],
    ['removed', { item: 'Mirror cap' }, '/place', 'ERR_REQUIRED'],
    ['polished', { panel: 'roof', sequence: 'light', sets: '0' }, '/sets', 'ERR_TOO_SMALL'],
    ['checked', { check: 'torque', waived: '1' }, '/why', 'ERR_REQUIRED'],
    ['unreadable', { panel: 'roof', why: 'x'.repeat(201) }, '/why', 'ERR_TOO_LONG'],
  ] as const)('%s with %j: %s is %s', (kind, fields, pointer, code) => {
    const body = benchBody(kind, form(fields))
    expect(body.ok ? [] : body.error.map((f) => [f.pointer, f.code])).toEqual([[pointer, code]])
  })

  it('reads what is typed or pasted as readings', () => {
    const values = (typed: string) => {
      const body = benchBody('reading', form({ values: typed, panel: 'roof' }))
      return body.ok ? body.value.values : body.error
    }
    expect(values('98 101 99,5 100 97')).toEqual([98, 101, 99.5, 100, 97])
    expect(values('98; 101\n99.5, 100')).toEqual([98, 101, 99.5, 100])
  })
})
