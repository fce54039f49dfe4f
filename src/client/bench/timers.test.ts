import { expect, it } from 'vitest'
import { clockText, leftUntil } from './timers'

it.each([
  [0, '0:00'],
  [999, '0:00'],
  [83_000, '1:23'],
  [600_000, '10:00'],
  [3_723_000, '1:02:03'],
  [-5_000, '0:05'],
])('%d ms are shown as %s', (ms, text) => expect(clockText(ms)).toBe(text))

it('ends when it was set to, through a locked screen and a clock put back', () => {
  const set = 1_000_000
  const ends = String(set + 600_000)
  expect(leftUntil(ends, set, 50)).toBe(600_000)
  expect(leftUntil(ends, set + 60_000, 60_050)).toBe(540_000)
  // The page slept: its own clock stood still, the wall's went on.
  expect(leftUntil(ends, set + 300_000, 60_050)).toBe(300_000)
  // Somebody put the clock back by an hour: the ten minutes do not become seventy.
  expect(leftUntil(ends, set - 3_300_000, 90_050)).toBe(510_000)
  // Another page, opened later, knows the stored end only.
  expect(leftUntil(String(set + 600_001), set + 600_101, 0)).toBe(-100)
})
