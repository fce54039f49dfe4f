import { createRequire } from 'node:module'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkVin, vinCheckDigit } from './vin'

const reference = createRequire(import.meta.url)('vin-validator') as {
  validate: (vin: string) => boolean
}

const digitOf = (text: string): string => {
  const read = checkVin(text)
  return read.ok ? read.value.checkDigit : read.error
}

// The first is the worked example of the NHTSA outline for new manufacturers; the second the sample of
// 49 CFR 565.15(c) (value from memory); the rest are examples in wide public use.
it.each([
  '1J9RP1A36A1644345',
  '1G4AH59H45G118341',
  '1M8GDM9AXKP042788',
  '11111111111111111',
  '5GZCZ43D13S812715',
])('%s holds', (vin) => {
  expect(digitOf(vin)).toBe('ok')
  expect(reference.validate(vin)).toBe(true)
})

it.each([
  ['SGZCZ43D13S812715', 'X'],
  ['1M8GDM9A0KP042788', 'X'],
  // Legal where no check digit is required.
  ['KLATF08Y1VB363636', '4'],
])('%s does not hold, %s is expected', (vin, digit) => {
  expect(digitOf(vin)).toBe('wrong')
  expect(vinCheckDigit(vin)).toBe(digit)
  expect(reference.validate(vin)).toBe(false)
})

it.each([
  ['1J9RP1A36A164434', 'vin-length'],
  ['1J9RP1A36A16443455', 'vin-length'],
  ['', 'vin-length'],
  ['IJ9RP1A36A1644345', 'vin-character'],
  ['1J9RP1A36A164434O', 'vin-character'],
  ['1J9QP1A36A1644345', 'vin-character'],
  ['1J9RP1A36A16443é5', 'vin-character'],
])('%s is refused: %s', (text, error) => {
  expect(checkVin(text)).toEqual({ ok: false, error })
})

it('agrees with the reference library on any seventeen characters', () => {
  const sign = fc.constantFrom(...'ABCDEFGHJKLMNPRSTUVWXYZ0123456789')
  const seventeen = fc.array(sign, { minLength: 17, maxLength: 17 }).map((all) => all.join(''))
  fc.assert(
    fc.property(seventeen, (vin) => {
      const fixed = vin.slice(0, 8) + vinCheckDigit(vin) + vin.slice(9)
      expect(digitOf(fixed)).toBe('ok')
      expect(reference.validate(fixed)).toBe(true)
      expect(digitOf(vin) === 'ok').toBe(reference.validate(vin))
    }),
    { numRuns: 500 },
  )
})

it('drops blanks and hyphens and raises letters', () => {
  const read = checkVin(' 1j9rp-1a36a 1644345 ')
  expect(read.ok && read.value.vin).toBe('1J9RP1A36A1644345')
})

describe('model year, position 10 and the thirty-year rule (73 FR 23367)', () => {
  const build = (seventh: string, tenth: string): string => {
    const vin = `1J9RP1${seventh}30${tenth}1644345`
    return vin.slice(0, 8) + vinCheckDigit(vin) + vin.slice(9)
  }
  const years = (vin: string, weight?: 'light' | 'heavy') => {
    const read = checkVin(vin, weight)
    return read.ok ? read.value.modelYears : read.error
  }
  it.each([
    ['1', 'A', 1980],
    ['A', 'A', 2010],
    ['1', '9', 2009],
    ['A', 'R', 2024],
    ['A', 'S', 2025],
    ['A', 'T', 2026],
    ['A', 'V', 2027],
    ['5', 'Y', 2000],
    ['5', '1', 2001],
    ['5', 'H', 1987],
    ['B', 'J', 2018],
  ])('seventh %s and tenth %s: %d', (seventh, tenth, year) => {
    expect(years(build(seventh, tenth))).toEqual([year])
  })
  it('gives both candidates for a heavy vehicle and where the check digit does not hold', () => {
    expect(years(build('A', 'A'), 'heavy')).toEqual([1980, 2010])
    expect(years('KLATF08Y1VB363636')).toEqual([1997, 2027])
  })
  it.each(['U', 'Z', '0'])('knows no year code %s', (tenth) => {
    expect(years(build('A', tenth))).toEqual([])
  })
  it('has none for the published example with U in position 10', () => {
    expect(years('5GZCZ43D1US812715')).toEqual([])
  })
})
