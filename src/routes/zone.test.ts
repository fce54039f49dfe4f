import { describe, expect, it } from 'vitest'
import { isoWeekday } from '../kernel/calendar'
import { isZoneName, zoneOf } from './zone'

const minute = (...at: Parameters<typeof Date.UTC>) => Date.UTC(...at) / 60_000
const change = (utcMinute: number, offsetMinutes: number) => ({
  fromUtcMinute: utcMinute,
  offsetMinutes,
})
/** Day of month of the n-th Sunday (1 first), or the last (n = -1), found by weekday alone. */
const sunday = (year: number, month: number, n: number): number => {
  const days: number[] = []
  for (let day = 1; day <= 31; day++) {
    const at = new Date(Date.UTC(year, month - 1, day))
    if (at.getUTCMonth() === month - 1 && isoWeekday(at.getTime() / 86_400_000) === 7)
      days.push(day)
  }
  return days.at(n < 0 ? n : n - 1)!
}

describe('zoneOf', () => {
  // Directive 2000/84/EC, articles 2 and 3: 01:00 UTC on the last Sundays of March and October.
  it.each([
    ['Europe/Berlin', 60],
    ['Europe/Lisbon', 0],
    ['Europe/Helsinki', 120],
  ])('%s changes at 01:00 UTC on the last Sundays of March and October', (name, winter) => {
    for (let year = 2020; year <= 2030; year++) {
      expect(zoneOf(name, Date.UTC(year, 5, 1), Date.UTC(year, 5, 2))).toEqual([
        change(minute(year, 0, 1), winter),
        change(minute(year, 2, sunday(year, 3, -1), 1), winter + 60),
        change(minute(year, 9, sunday(year, 10, -1), 1), winter),
      ])
    }
  })

  // Dates printed by the commission for the years 2022-2026 (OJ C 149, 2021): values from memory.
  it.each([
    [2022, 27, 30],
    [2023, 26, 29],
    [2024, 31, 27],
    [2025, 30, 26],
    [2026, 29, 25],
  ])('%i: 0%i March and %i October', (year, march, october) => {
    const zone = zoneOf('Europe/Paris', Date.UTC(year, 0, 1), Date.UTC(year, 1, 1))
    expect(zone.slice(1).map((entry) => entry.fromUtcMinute)).toEqual([
      minute(year, 2, march, 1),
      minute(year, 9, october, 1),
    ])
  })

  // Energy Policy Act of 2005, section 110 (15 USC 260a): second Sunday of March to first Sunday of
  // November, at 02:00 local time.
  it.each([
    ['America/New_York', -300],
    ['America/Los_Angeles', -480],
  ])('%s changes at 02:00 local time', (name, winter) => {
    for (let year = 2020; year <= 2030; year++) {
      const spring = minute(year, 2, sunday(year, 3, 2), 2) - winter
      const autumn = minute(year, 10, sunday(year, 11, 1), 2) - (winter + 60)
      expect(zoneOf(name, Date.UTC(year, 5, 1), Date.UTC(year, 5, 2)).slice(1)).toEqual([
        change(spring, winter + 60),
        change(autumn, winter),
      ])
    }
  })

  it.each([
    ['UTC', 0],
    ['Asia/Kolkata', 330],
    ['America/Phoenix', -420],
  ])('%s keeps one offset', (name, offset) => {
    const zone = zoneOf(name, Date.UTC(2026, 0, 1), Date.UTC(2027, 0, 1))
    expect(zone).toEqual([change(minute(2026, 0, 1), offset)])
  })

  it('tells names it knows from others', () => {
    expect(isZoneName('Europe/Berlin')).toBe(true)
    expect(isZoneName('Europe/Nowhere')).toBe(false)
    expect(() => zoneOf('Europe/Nowhere', 0, 1)).toThrow(RangeError)
  })
})
