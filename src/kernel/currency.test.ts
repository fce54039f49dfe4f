import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { currencyCodes, currencyExponent, decimalFromMinor, minorFromDecimal } from './currency'
import { ok } from './result'

// ISO 4217 minor units as listed in the public-domain table of currency codes.
it.each([
  ['USD', 2],
  ['EUR', 2],
  ['GBP', 2],
  ['HUF', 2],
  ['MRU', 2],
  ['JPY', 0],
  ['KRW', 0],
  ['VND', 0],
  ['ISK', 0],
  ['KWD', 3],
  ['BHD', 3],
  ['TND', 3],
  ['CLF', 4],
  ['UYW', 4],
])('%s has %d places', (code, exponent) => {
  expect(currencyExponent(code)).toEqual(ok(exponent))
})

it('agrees with the engine’s own currency table, where that is unrounded by custom', () => {
  // Some engines show fewer places than ISO 4217 for these; the standard counts here.
  const shownOtherwise = new Set(
    'IDR COP HUF IQD PKR RSD TWD UYW CLF CZK UGX ISK KRW CLP VND'.split(' '),
  )
  expect(currencyCodes.length).toBeGreaterThanOrEqual(60)
  expect(new Set(currencyCodes).size).toBe(currencyCodes.length)
  for (const currency of currencyCodes.filter((c) => !shownOtherwise.has(c))) {
    const places = new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions()
    expect([currency, currencyExponent(currency)]).toEqual([
      currency,
      ok(places.maximumFractionDigits),
    ])
  }
})

it('knows no metal and no made-up code', () => {
  for (const code of ['XAU', 'XXX', 'usd', '', 'ZZZ']) {
    expect(currencyExponent(code)).toEqual({ ok: false, error: 'currency-unknown' })
  }
})

describe('decimal text', () => {
  it.each([
    [1234, 'USD', '12.34'],
    [5, 'EUR', '0.05'],
    [-5, 'EUR', '-0.05'],
    [1234, 'JPY', '1234'],
    [1234, 'KWD', '1.234'],
    [1234, 'CLF', '0.1234'],
    [0, 'GBP', '0.00'],
  ])('%d %s is %s', (minor, code, text) => {
    expect(decimalFromMinor(minor, code)).toEqual(ok(text))
    expect(minorFromDecimal(text, code)).toEqual(ok(minor))
  })

  it.each([
    ['12.345', 'USD', 'amount-too-fine'],
    ['12.5', 'JPY', 'amount-too-fine'],
    ['1,200', 'USD', 'amount-unreadable'],
    ['', 'USD', 'amount-unreadable'],
    ['1e3', 'USD', 'amount-unreadable'],
    ['1', 'XAU', 'currency-unknown'],
  ])('refuses %s %s', (text, code, error) => {
    expect(minorFromDecimal(text, code)).toEqual({ ok: false, error })
  })

  it('takes trailing zeros, and comes back from every amount', () => {
    expect(minorFromDecimal('12.3400', 'USD')).toEqual(ok(1234))
    expect(minorFromDecimal('7', 'KWD')).toEqual(ok(7000))
    expect(minorFromDecimal('1000000000000', 'BIF')).toEqual(ok(1e12))
    const amount = fc.integer({ min: -1e12, max: 1e12 })
    fc.assert(
      fc.property(amount, fc.constantFrom(...currencyCodes), (minor, code) => {
        const text = decimalFromMinor(minor, code)
        expect(text.ok && minorFromDecimal(text.value, code)).toEqual(ok(minor))
      }),
    )
  })
})
