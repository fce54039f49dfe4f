import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseDay, type Zone } from './calendar'
import {
  formatMinute,
  isoOfMinute,
  isoOfMs,
  offsetAt,
  splitLocal,
  toLocalMinute,
  toUtcMinute,
  UTC,
} from './calendar-zone'

const minuteOf = (text: string): number => Date.parse(text) / 60_000
// Central European time of 2026 (Directive 2000/84/EC): 29 March and 25 October, 01:00 UTC.
const central: Zone = [
  { fromUtcMinute: minuteOf('2026-01-01T00:00Z'), offsetMinutes: 60 },
  { fromUtcMinute: minuteOf('2026-03-29T01:00Z'), offsetMinutes: 120 },
  { fromUtcMinute: minuteOf('2026-10-25T01:00Z'), offsetMinutes: 60 },
]
const local = (date: string, minute: number): number => {
  const day = parseDay(date)
  if (!day.ok) throw new Error(day.error)
  return day.value * 1440 + minute
}

describe('zone as data', () => {
  it.each([
    ['before the first entry', '2025-06-01', 600, '2025-06-01T09:00:00Z'],
    ['winter', '2026-01-15', 600, '2026-01-15T09:00:00Z'],
    ['last minute of winter', '2026-03-29', 119, '2026-03-29T00:59:00Z'],
    ['first minute of summer', '2026-03-29', 180, '2026-03-29T01:00:00Z'],
    ['in the gap: the change itself', '2026-03-29', 150, '2026-03-29T01:00:00Z'],
    ['summer', '2026-07-01', 600, '2026-07-01T08:00:00Z'],
    ['before the overlap', '2026-10-25', 119, '2026-10-24T23:59:00Z'],
    ['in the overlap: the first of two', '2026-10-25', 150, '2026-10-25T00:30:00Z'],
    ['after the overlap', '2026-10-25', 180, '2026-10-25T02:00:00Z'],
  ])('%s', (_, date, minute, utc) => {
    expect(isoOfMinute(toUtcMinute(central, local(date, minute)))).toBe(utc)
  })

  it('comes back to the same local minute outside the gap', () => {
    const first = minuteOf('2026-01-01T00:00Z')
    fc.assert(
      fc.property(fc.integer({ min: first, max: first + 365 * 1440 }), (utc) => {
        const there = toLocalMinute(central, utc)
        const back = toUtcMinute(central, there)
        expect(toLocalMinute(central, back)).toBe(there)
        expect(back).toBeLessThanOrEqual(utc)
        expect(utc - back === 0 || utc - back === 60).toBe(true)
      }),
      { numRuns: 1000, seed: 1 },
    )
  })

  it('without entries is UTC', () => {
    expect(offsetAt(UTC, 12_345)).toBe(0)
    expect(toUtcMinute(UTC, 12_345)).toBe(12_345)
    expect(toLocalMinute(UTC, 12_345)).toBe(12_345)
  })

  it('splits and writes minutes', () => {
    expect(splitLocal(local('2026-03-29', 150))).toEqual({ date: '2026-03-29', minute: 150 })
    expect(splitLocal(-1)).toEqual({ date: '1969-12-31', minute: 1439 })
    expect([0, 65, 1439, 1440].map(formatMinute)).toEqual(['00:00', '01:05', '23:59', '24:00'])
  })

  it('writes instants as ECMA-262 toISOString does', () => {
    fc.assert(
      fc.property(fc.integer({ min: -62_167_219_200_000, max: 253_402_300_799_999 }), (ms) => {
        expect(isoOfMs(ms)).toBe(new Date(ms).toISOString())
        const minute = Math.floor(ms / 60_000)
        expect(isoOfMinute(minute)).toBe(
          new Date(minute * 60_000).toISOString().replace('.000Z', 'Z'),
        )
      }),
      { numRuns: 1000, seed: 1 },
    )
  })
})
