import { err, ok, type Result } from './result'

/** A civil date of the proleptic Gregorian calendar; month 1-12, day 1-31. */
export type CivilDate = { readonly year: number; readonly month: number; readonly day: number }
/**
 * A time zone as plain data: from each UTC minute (since 1970-01-01T00:00Z) on, local = UTC + offset.
 * Ascending; the first entry also holds before its own start. Empty means UTC.
 */
export type Zone = readonly { readonly fromUtcMinute: number; readonly offsetMinutes: number }[]

export type DateError = 'date-format' | 'date-range'

const ISO_DATE = /^(\d{4})-(\d{2})-(\d{2})$/
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const

/** Leap years every 4, not 100, but 400 (Gregorian rule, ISO 8601 section 3). */
export const isLeapYear = (year: number): boolean =>
  year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)

/** Days in a month, 28-31; month is 1-12. */
export const daysInMonth = (year: number, month: number): number =>
  month === 2 && isLeapYear(year) ? 29 : MONTH_DAYS[month - 1]!

/** Day number with 1970-01-01 = 0; years 0-9999. Counts in 400-year cycles of 146 097 days from 1 March. */
export const dayNumber = (date: CivilDate): number => {
  const year = date.month <= 2 ? date.year - 1 : date.year
  const cycle = Math.floor(year / 400)
  const ofCycle = year - cycle * 400
  const monthFromMarch = date.month > 2 ? date.month - 3 : date.month + 9
  const ofYear = Math.floor((153 * monthFromMarch + 2) / 5) + date.day - 1
  const leapDays = Math.floor(ofCycle / 4) - Math.floor(ofCycle / 100)
  return cycle * 146_097 + ofCycle * 365 + leapDays + ofYear - 719_468
}

/** The civil date of a day number; the inverse of dayNumber. */
export const civilDate = (dayNo: number): CivilDate => {
  const shifted = dayNo + 719_468
  const cycle = Math.floor(shifted / 146_097)
  const ofCycle = shifted - cycle * 146_097
  const yearOfCycle = Math.floor(
    (ofCycle -
      Math.floor(ofCycle / 1460) +
      Math.floor(ofCycle / 36_524) -
      Math.floor(ofCycle / 146_096)) /
      365,
  )
  const ofYear =
    ofCycle - (365 * yearOfCycle + Math.floor(yearOfCycle / 4) - Math.floor(yearOfCycle / 100))
  const monthFromMarch = Math.floor((5 * ofYear + 2) / 153)
  const day = ofYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9
  return { year: yearOfCycle + cycle * 400 + (month <= 2 ? 1 : 0), month, day }
}

/** ISO 8601 weekday of a day number: 1 Monday to 7 Sunday. */
export const isoWeekday = (dayNo: number): number => ((((dayNo + 3) % 7) + 7) % 7) + 1

const pad = (value: number, width: number): string => String(value).padStart(width, '0')

/** 'YYYY-MM-DD' of a civil date. */
export const formatDate = (date: CivilDate): string =>
  `${pad(date.year, 4)}-${pad(date.month, 2)}-${pad(date.day, 2)}`

/** 'YYYY-MM-DD' of a day number. */
export const formatDay = (dayNo: number): string => formatDate(civilDate(dayNo))

/** Reads 'YYYY-MM-DD'. Errors: 'date-format' (another shape), 'date-range' (no such day). */
export const parseDate = (text: string): Result<CivilDate, DateError> => {
  const match = ISO_DATE.exec(text)
  if (!match) return err('date-format')
  const date = { year: Number(match[1]), month: Number(match[2]), day: Number(match[3]) }
  if (date.month < 1 || date.month > 12) return err('date-range')
  if (date.day < 1 || date.day > daysInMonth(date.year, date.month)) return err('date-range')
  return ok(date)
}

/** Day number of 'YYYY-MM-DD'; errors as parseDate. */
export const parseDay = (text: string): Result<number, DateError> => {
  const date = parseDate(text)
  return date.ok ? ok(dayNumber(date.value)) : date
}

/** The date a number of days later (or earlier, when negative). */
export const addDays = (date: CivilDate, days: number): CivilDate =>
  civilDate(dayNumber(date) + days)

/** Negative, zero or positive as a is before, on or after b. */
export const compareDates = (a: CivilDate, b: CivilDate): number => dayNumber(a) - dayNumber(b)
