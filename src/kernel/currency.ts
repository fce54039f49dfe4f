import { err, ok, type Result } from './result'

// ISO 4217 minor units (public-domain table of codes). Precious metals and test codes have none
// and are left out: no price is stated in them.
const byExponent = [
  'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF',
  '',
  'AED ARS AUD BGN BRL CAD CHF CNY COP CZK DKK EGP EUR GBP GEL HKD HUF IDR ILS INR KES MAD MRU MXN MYR NGN NOK NZD PEN PHP PKR PLN QAR RON RSD SAR SEK SGD THB TRY TWD UAH USD UYU ZAR',
  'BHD IQD JOD KWD LYD OMR TND',
  'CLF UYW',
] as const
const scales = [1, 10, 100, 1000, 10_000] as const

const exponents: ReadonlyMap<string, number> = new Map(
  byExponent.flatMap((codes, exponent) =>
    codes
      .split(' ')
      .filter((code) => code !== '')
      .map((code) => [code, exponent] as const),
  ),
)

/** The ISO 4217 codes the project can price in. */
export const currencyCodes: readonly string[] = [...exponents.keys()]

export type CurrencyError = 'currency-unknown'
export type AmountError = CurrencyError | 'amount-unreadable' | 'amount-too-fine'

/** Number of decimal places of the minor unit (0, 2, 3 or 4), by upper-case ISO 4217 code. */
export const currencyExponent = (code: string): Result<number, CurrencyError> => {
  const exponent = exponents.get(code)
  return exponent === undefined ? err('currency-unknown') : ok(exponent)
}

/** Minor units as plain decimal text: 1234 in USD is "12.34"; no grouping, no sign but "-". */
export const decimalFromMinor = (minor: number, code: string): Result<string, CurrencyError> => {
  const exponent = exponents.get(code)
  if (exponent === undefined) return err('currency-unknown')
  if (!Number.isSafeInteger(minor)) throw new RangeError('amounts must be whole minor units')
  const digits = String(Math.abs(minor)).padStart(exponent + 1, '0')
  const cut = digits.length - exponent
  const sign = minor < 0 ? '-' : ''
  const text = exponent === 0 ? digits : `${digits.slice(0, cut)}.${digits.slice(cut)}`
  return ok(sign + text)
}

/** Plain decimal text as minor units; more places than the currency has are an error, not rounded away. */
export const minorFromDecimal = (text: string, code: string): Result<number, AmountError> => {
  const exponent = exponents.get(code)
  if (exponent === undefined) return err('currency-unknown')
  const parts = /^(-?)(\d{1,13})(?:\.(\d+))?$/.exec(text.trim())
  if (parts === null) return err('amount-unreadable')
  const places = (parts[3] ?? '').replace(/0+$/, '')
  if (places.length > exponent) return err('amount-too-fine')
  const size = Number(parts[2]) * scales[exponent]! + Number(places.padEnd(exponent, '0') || '0')
  return Number.isSafeInteger(size)
    ? ok(parts[1] === '-' ? 0 - size : size)
    : err('amount-unreadable')
}
