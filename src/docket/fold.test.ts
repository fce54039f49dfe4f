import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fold } from './fold'
import { isBenchKind, kinds } from './kinds'
import type { Line } from './line'
import { MOVES, mayMove, STATES, turnOf } from './states'

const line = (seq: number, kind: string, body: unknown, more: Partial<Line> = {}): Line => ({
  docket: 'd1',
  seq,
  id: `l${seq}`,
  v: 1,
  kind,
  body,
  by: 'owner',
  at: 1_000 * seq,
  ...more,
})

const opened = line(1, 'opened', { from: 'customer', script: '1', language: 'en' })

describe('fold', () => {
  it('keeps the last answer and forgets a withdrawn one', () => {
    const d = fold([
      opened,
      line(2, 'answered', { question: 'body', answer: { value: 'saloon' } }),
      line(3, 'answered', { question: 'body', answer: { value: 'estate' } }),
      line(4, 'answered', { question: 'year', answer: { unsure: true } }),
      line(5, 'unanswered', { question: 'year' }),
    ])
    expect(d.answers).toEqual({ body: { value: 'estate' } })
    expect(d.rev).toBe(5)
  })

  it('counts a struck line nowhere but keeps its reason', () => {
    const d = fold([
      opened,
      line(2, 'reading', { panel: 'roof', kind: 'panel', values: [910] }, { device: 'a', n: 1 }),
      line(3, 'reading', { panel: 'roof', kind: 'panel', values: [91] }, { device: 'a', n: 2 }),
      line(4, 'struck', { line: 'l2', why: 'typing error' }, { device: 'a', n: 3 }),
    ])
    expect(d.bench.readings.map((r) => r.values)).toEqual([[91]])
    expect(d.struck).toEqual({ l2: 'typing error' })
  })

  it('is on the bench as soon as a dated car has been checked in', () => {
    const dated = line(2, 'dated', {
      start: '2026-06-01',
      people: 1,
      readyLikely: '2026-06-02T12:00:00Z',
      readyCautious: '2026-06-03T12:00:00Z',
    })
    expect(fold([opened, dated]).state).toBe('dated')
    const checkedIn = line(3, 'checked-in', { consents: [] }, { device: 'a', n: 1 })
    expect(fold([opened, dated, checkedIn]).state).toBe('on-bench')
    const looked = line(
      2,
      'reading',
      { panel: 'roof', kind: 'panel', values: [91] },
      { device: 'a', n: 1 },
    )
    expect(fold([opened, looked, { ...dated, seq: 3 }]).state).toBe('dated')
    const again = { ...dated, seq: 5, id: 'l5' }
    expect(
      fold([opened, dated, checkedIn, line(4, 'moved', { to: 'come-back' }), again]).state,
    ).toBe('dated')
  })

  it('adds up begun blocks, and takes minutes entered afterwards instead', () => {
    const at = (m: number) => m * 60_000
    const b = (n: number, kind: string, minute: number, body: object = {}) =>
      line(n, kind, { step: 'wash', ...body }, { device: 'a', n, at: at(minute) })
    const running = fold([
      opened,
      b(2, 'began', 0),
      b(3, 'broke-off', 20),
      b(4, 'began', 60),
      b(5, 'done', 75),
    ])
    expect(running.bench.steps.wash).toMatchObject({ state: 'done', minutes: 35, entered: false })
    const entered = fold([
      opened,
      b(2, 'began', 0),
      b(3, 'done', 500, { minutes: 40, entered: true }),
    ])
    expect(entered.bench.steps.wash).toMatchObject({ minutes: 40, entered: true })
  })

  it('is the same docket for any interleaving of bench lines from several devices', () => {
    const steps = ['wash', 'clay', 'tape']
    const bodies = {
      began: fc.record({ step: fc.constantFrom(...steps) }),
      'broke-off': fc.record({ step: fc.constantFrom(...steps) }),
      done: fc.record({ step: fc.constantFrom(...steps) }),
      reading: fc.record({
        panel: fc.constantFrom('roof', 'bonnet'),
        kind: fc.constant('panel'),
        values: fc.array(fc.integer({ min: 60, max: 200 }), { minLength: 1, maxLength: 3 }),
      }),
      unreadable: fc.record({
        panel: fc.constant('roof'),
        why: fc.constantFrom('plastic', 'film'),
      }),
      checked: fc.record({ check: fc.constantFrom('torque', 'belts') }),
    }
    const one = fc.constantFrom(...(Object.keys(bodies) as (keyof typeof bodies)[])).chain((kind) =>
      fc.record({
        kind: fc.constant(kind),
        body: bodies[kind] as fc.Arbitrary<object>,
        at: fc.integer({ min: 0, max: 50 }),
      }),
    )
    fc.assert(
      fc.property(
        fc.array(fc.array(one, { maxLength: 8 }), { minLength: 1, maxLength: 3 }),
        fc.infiniteStream(fc.nat(1_000_000)),
        (devices, stream) => {
          const written = devices.flatMap((lines, d) =>
            lines.map((l, n) => ({
              ...l,
              device: `dev${d}`,
              n,
              id: `dev${d}-${n}`,
              at: l.at * 60_000,
            })),
          )
          const arrive = (order: readonly (typeof written)[number][]): Line[] => [
            opened,
            ...order.map((l, i) => line(i + 2, l.kind, l.body, l)),
          ]
          const shuffled = written
            .map((l) => ({ l, key: stream.next().value ?? 0 }))
            .sort((a, b) => a.key - b.key)
            .map(({ l }) => l)
          const a = fold(arrive(written))
          const b = fold(arrive(shuffled))
          expect(b.bench).toEqual(a.bench)
          expect(b.state).toBe(a.state)
        },
      ),
      { numRuns: 300 },
    )
  })
})

describe('states', () => {
  it('names only states that exist and leaves nothing but a withdrawal final', () => {
    for (const state of STATES)
      for (const to of MOVES[state]) expect(STATES, `${state} to ${to}`).toContain(to)
    expect(STATES.filter((s) => MOVES[s].length === 0)).toEqual(['withdrawn'])
  })

  it('reaches every state from answering', () => {
    const seen = new Set<string>(['answering'])
    for (const state of seen) for (const to of MOVES[state as keyof typeof MOVES]) seen.add(to)
    expect([...seen].sort()).toEqual([...STATES].sort())
  })

  it('lets a question of the owner make it our turn', () => {
    expect(turnOf('quoted', false)).toBe('theirs')
    expect(turnOf('quoted', true)).toBe('ours')
    expect(mayMove('handed-over', 'quoted')).toBe(false)
  })
})

describe('line kinds', () => {
  it('keeps what the desk decides from the bench, and refuses keys it does not know', () => {
    for (const kind of ['decided', 'revised', 'extra-decided', 'handed-over'])
      expect(isBenchKind(kind), kind).toBe(false)
    for (const kind of ['began', 'reading', 'struck']) expect(isBenchKind(kind), kind).toBe(true)
    expect(kinds.began.safeParse({ step: 'wash', extra: 1 }).success).toBe(false)
    expect(kinds.reading.safeParse({ panel: 'roof', kind: 'panel', values: [] }).success).toBe(
      false,
    )
  })
})
