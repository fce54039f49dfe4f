import { expect, it } from 'vitest'
import { foldBench } from './bench'
import { kinds } from './kinds'
import type { Line } from './line'

let seq = 0
const line = (kind: keyof typeof kinds, body: unknown, at = 60_000 * seq): Line => {
  seq += 1
  return {
    docket: 'd',
    seq,
    id: `l${seq}`,
    v: 1,
    kind,
    body: kinds[kind].parse(body),
    by: 'bench',
    device: 'a',
    n: seq,
    at,
  }
}

it('adds the blocks of a step, caps a forgotten one, and marks minutes that were entered afterwards', () => {
  const folded = foldBench([
    line('began', { step: 'wash' }, 0),
    line('broke-off', { step: 'wash' }, 10 * 60_000),
    line('began', { step: 'wash' }, 60 * 60_000),
    line('done', { step: 'wash' }, 75 * 60_000),
    line('began', { step: 'clay' }, 0),
    line('done', { step: 'clay' }, 40 * 3_600_000),
    line('began', { step: 'dry' }, 0),
    line('done', { step: 'dry', minutes: 35, entered: true }, 5 * 60_000),
  ])
  expect(folded.steps.wash).toMatchObject({ state: 'done', minutes: 25, entered: false })
  expect(folded.steps.clay).toMatchObject({ minutes: 720 })
  expect(folded.steps.dry).toMatchObject({ minutes: 35, entered: true })
})

it('keeps what each kind says, a part back on where it was put back', () => {
  const off = line('removed', { item: 'spacer 5 mm', place: 'front left', before: 'wheel' })
  const folded = foldBench([
    off,
    line('removed', { item: 'badge', place: 'boot' }),
    line('refitted', { removal: off.id }),
    line('gauge-checked', { shims: [{ nominal: 102, read: 101 }], probe: 'magnetic' }),
    line('timer-set', { step: 'mould-treat', minutes: 10 }, 1_000),
    line('film-answered', { go: 'leave', why: { text: 't1' }, how: 'phone' }),
    line('crew-changed', { people: 1, noLifting: true }),
    line('stayed-overnight', { go: 'carry-on', where: 'bay 1', keys: 'safe', shut: true }),
    line('recorded', { what: 'coating-batch', value: 'B 12' }),
  ])
  expect(folded.removals.map((r) => [r.item, r.refitted])).toEqual([
    ['spacer 5 mm', true],
    ['badge', false],
  ])
  expect(folded.gaugeChecks[0]?.shims).toEqual([{ nominal: 102, read: 101 }])
  expect(folded.timers[0]).toMatchObject({ step: 'mould-treat', minutes: 10, at: 1_000 })
  expect(folded.filmAnswers[0]?.go).toBe('leave')
  expect(folded.crews[0]).toMatchObject({ people: 1, noLifting: true })
  expect(folded.nights[0]).toMatchObject({ go: 'carry-on', where: 'bay 1' })
  expect(folded.recorded[0]?.value).toBe('B 12')
})

it.each([
  ['timer-set', { step: 'mould-treat', minutes: 0 }],
  ['timer-set', { step: 'mould-treat' }],
  ['gauge-checked', { shims: [] }],
  ['stayed-overnight', { go: 'carry-on', where: '', keys: 'safe', shut: true }],
  ['crew-changed', { people: 7 }],
  ['film-answered', { go: 'leave' }],
] as const)('refuses a %s line that lacks what it stands for', (kind, body) => {
  expect(kinds[kind].safeParse(body).success).toBe(false)
})
