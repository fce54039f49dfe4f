import { expect, it } from 'vitest'
import { gaugeOf, shimVerdicts, trustAt } from './gauge-check'

const check = (at: number, read: number) => ({ at, shims: [{ nominal: 100, read }] })

it.each([
  // ASTM E376-11 Note 2: within ±10 % or ±2.5 µm, whichever is greater.
  [25, 27.5, true],
  [25, 27.6, false],
  [100, 110, true],
  [100, 89.9, false],
  [10, 12.5, true],
  [0, 2.5, true],
] as const)('a shim of %d µm read as %d passes: %s', (nominal, read, ok) => {
  const verdict = shimVerdicts({ shims: [{ nominal, read }] })
  expect(verdict.ok).toBe(ok)
  expect(verdict.shims[0]?.off).toBeCloseTo(read - nominal, 6)
})

it('fails as a whole where one shim fails', () => {
  const shims = [
    { nominal: 50, read: 50 },
    { nominal: 100, read: 120 },
  ]
  expect(shimVerdicts({ shims }).ok).toBe(false)
})

it('doubts the readings on both sides of a failed check, back to and up to the checks that passed', () => {
  const checks = [check(10, 101), check(20, 125), check(30, 100)]
  expect([5, 10, 15, 20, 25, 30, 35].map((at) => trustAt(at, checks))).toEqual([
    'unchecked',
    'failed',
    'failed',
    'failed',
    'failed',
    'passed',
    'passed',
  ])
  expect(trustAt(5, [])).toBe('unchecked')
})

it('gives the model the failed check while a reading rests on it', () => {
  const checks = [check(10, 101), check(20, 125), check(30, 100)]
  expect(gaugeOf(checks, [{ at: 25 }])).toEqual({ verification: [{ nominal: 100, read: 125 }] })
  expect(gaugeOf(checks, [{ at: 12 }, { at: 35 }]).verification?.[0]?.read).toBe(125)
  expect(gaugeOf(checks, [{ at: 35 }])).toEqual({ verification: [{ nominal: 100, read: 100 }] })
  expect(gaugeOf([], [{ at: 1 }])).toEqual({})
})
