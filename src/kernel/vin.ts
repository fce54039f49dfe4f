import { err, ok, type Result } from './result'

export type VinError = 'vin-length' | 'vin-character'
export type Vin = {
  readonly vin: string
  /** 49 CFR 565.15(c). Only North America requires it, so 'wrong' elsewhere is no fault. */
  readonly checkDigit: 'ok' | 'wrong'
  /** Ascending; empty when position 10 is no year code (possible outside North America). */
  readonly modelYears: readonly number[]
}

// Transliteration of 49 CFR 565.15(c) table III: the value of each letter; digits stand for themselves.
const letters = 'ABCDEFGHJKLMNPRSTUVWXYZ'
const values = '12345678123457923456789'
const weights = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2] as const
// Year codes of position 10, from 1980 on and again from 2010 on (I, O, Q, U, Z, 0 are not used).
const yearCodes = 'ABCDEFGHJKLMNPRSTVWXY123456789'

const worthOf = (sign: string): number => {
  const at = letters.indexOf(sign)
  return Number(at < 0 ? sign : values[at])
}

/** The check digit ('0'–'9' or 'X') that a well-formed 17-character number should carry in position 9. */
export const vinCheckDigit = (vin: string): string => {
  let sum = 0
  for (let i = 0; i < weights.length; i++) sum += worthOf(vin[i]!) * weights[i]!
  const rest = sum % 11
  return rest === 10 ? 'X' : String(rest)
}

const modelYearsOf = (vin: string, splits: boolean): number[] => {
  const at = yearCodes.indexOf(vin[9]!)
  if (at < 0) return []
  if (!splits) return [1980 + at, 2010 + at]
  const numeric = vin[6]! >= '0' && vin[6]! <= '9'
  return [(numeric ? 1980 : 2010) + at]
}

/**
 * Reads a vehicle identification number: blanks and hyphens dropped, letters raised.
 * Position 7 tells the two thirty-year cycles apart (73 FR 23367) only for light vehicles (up to 4 536 kg)
 * built under 49 CFR 565; a heavy one, or one whose check digit does not hold, keeps both candidates.
 */
export const checkVin = (
  text: string,
  weight: 'light' | 'heavy' = 'light',
): Result<Vin, VinError> => {
  const bare = text.replace(/[\s-]/g, '')
  if (bare.length !== 17) return err('vin-length')
  if (!/^[A-HJ-NPR-Za-hj-npr-z0-9]{17}$/.test(bare)) return err('vin-character')
  const vin = bare.toUpperCase()
  const checkDigit = vin[8] === vinCheckDigit(vin) ? 'ok' : 'wrong'
  const modelYears = modelYearsOf(vin, weight === 'light' && checkDigit === 'ok')
  return ok({ vin, checkDigit, modelYears })
}
