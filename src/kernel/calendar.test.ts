import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  addDays,
  civilDate,
  compareDates,
  dayNumber,
  daysInMonth,
  formatDate,
  formatDay,
  isLeapYear,
  isoWeekday,
  parseDate,
  parseDay,
} from './calendar'

const anyDay = fc.integer({ min: -719_528, max: 2_932_896 })

describe('day numbers', () => {
  // 2000-01-01 was a Saturday, MJD 51544; 1970-01-01 is MJD 40587 (standard epoch tables); 1582-10-15,
  // the first day of the Gregorian calendar, was a Friday (bull Inter gravissimas). ISO 8601 year 0.
  it.each([
    ['1970-01-01', 0, 4],
    ['2000-01-01', 51_544 - 40_587, 6],
    ['1582-10-15', -141_427, 5],
    ['0000-03-01', -719_468, 3],
    ['9999-12-31', 2_932_896, 5],
  ])('%s is day %i, weekday %i', (text, day, weekday) => {
    expect(parseDay(text)).toEqual({ ok: true, value: day })
    expect(formatDay(day)).toBe(text)
    expect(isoWeekday(day)).toBe(weekday)
  })

  it('agrees with the Date of ECMA-262 on every day', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        const date = new Date(day * 86_400_000)
        expect(civilDate(day)).toEqual({
          year: date.getUTCFullYear(),
          month: date.getUTCMonth() + 1,
          day: date.getUTCDate(),
        })
        expect(dayNumber(civilDate(day))).toBe(day)
        expect(isoWeekday(day) % 7).toBe(date.getUTCDay())
        expect(formatDay(day)).toBe(date.toISOString().slice(0, 10))
      }),
      { numRuns: 2000, seed: 1 },
    )
  })

  it('adds and compares', () => {
    const date = { year: 2024, month: 2, day: 28 }
    expect(formatDate(addDays(date, 1))).toBe('2024-02-29')
    expect(formatDate(addDays(date, 2))).toBe('2024-03-01')
    expect(formatDate(addDays(date, -59))).toBe('2023-12-31')
    expect(compareDates(date, addDays(date, 3))).toBe(-3)
    expect(compareDates(date, date)).toBe(0)
  })
})

describe('leap years', () => {
  // The rule's own examples: 1900 is common, 2000 is leap (ISO 8601).
  it.each([
    [1900, false, 28],
    [2000, true, 29],
    [2023, false, 28],
    [2024, true, 29],
  ])('%i: leap %s, February %i', (year, leap, days) => {
    expect(isLeapYear(year)).toBe(leap)
    expect(daysInMonth(year, 2)).toBe(days)
  })
})

describe('parseDate', () => {
  it.each([
    ['2026-02-29', 'date-range'],
    ['2026-13-01', 'date-range'],
    ['2026-00-10', 'date-range'],
    ['2026-04-31', 'date-range'],
    ['2026-04-00', 'date-range'],
    ['2026-4-1', 'date-format'],
    ['20260401', 'date-format'],
    ['2026-04-01T00:00', 'date-format'],
    ['', 'date-format'],
  ])('%s is refused as %s', (text, error) => {
    expect(parseDate(text)).toEqual({ ok: false, error })
  })
})
