import { describe, expect, it } from 'vitest'
import { typedNumber } from './typed-number'

/** What people would see for a number in that language, made by the runtime's own CLDR data. */
const shown = (locale: string, n: number, digits: number): string =>
  new Intl.NumberFormat(locale, {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  }).format(n)

describe('typedNumber', () => {
  it.each(['en-GB', 'de-DE', 'de-CH', 'fr-FR', 'es-ES', 'pl-PL', 'sv-SE'])(
    'reads back what %s writes (CLDR)',
    (locale) => {
      for (const n of [0, 5, 250, 1250, 12_000, 123_456, 1_234_567]) {
        expect(Number(typedNumber(shown(locale, n, 0).replace('\u2212', '-')))).toBe(n)
        expect(Number(typedNumber(shown(locale, n + 0.25, 2)))).toBe(n + 0.25)
      }
    },
  )

  it.each([
    ['12,5', '12.5'],
    ['0.125', '0.125'],
    ['-3', '-3'],
    ['1,250.50', '1250.50'],
    ['1.250,50', '1250.50'],
    ['007', '007'],
  ])('reads %s as %s', (text, plain) => {
    expect(typedNumber(text)).toBe(plain)
  })

  it('takes a single mark as the decimal one where numbers have three decimals', () => {
    expect(typedNumber('1.250', 3)).toBe('1.250')
    expect(typedNumber('1.250', 2)).toBe('1250')
  })

  it.each([
    '',
    ' ',
    'x',
    '1e5',
    '0x10',
    '1.2.3',
    '1,2,3',
    '12,34,567',
    '5.',
    '.5',
    '--1',
    '1-2',
    'Infinity',
    '1,25.5',
  ])('refuses %j', (text) => {
    expect(typedNumber(text)).toBeUndefined()
  })
})
