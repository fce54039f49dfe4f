import { describe, expect, it } from 'vitest'
import { fold } from './fold'
import { kinds } from './kinds'
import type { Line } from './line'

const line = (n: number, kind: string, body: unknown, device = 'a'): Line => ({
  docket: 'd',
  seq: n,
  id: `l${n}`,
  v: 1,
  kind,
  body,
  by: 'bench',
  device,
  n,
  at: n * 1000,
})

const pins = { item: 'own:pins', what: 'part', thing: 'Badge pins' }

describe('what is in hand', () => {
  it('keeps the last word on each item, whatever order the lines arrived in', () => {
    const lines = [
      line(1, 'wanted', pins),
      line(2, 'supplied', { item: 'own:pins', state: 'on-its-way', expected: '2026-06-10' }),
      line(3, 'supplied', { item: 'own:pins', state: 'in-hand' }, 'b'),
    ]
    const { inHand } = fold(lines).bench
    expect(fold([...lines].reverse()).bench.inHand).toEqual(inHand)
    expect(inHand.wanted['own:pins']).toMatchObject({ ...pins, line: 'l1', by: 'bench' })
    expect(inHand.supply['own:pins']).toMatchObject({ state: 'in-hand', at: 3000 })
  })

  it('forgets a struck wish', () => {
    const struck = line(2, 'struck', { line: 'l1', why: 'not needed' })
    expect(fold([line(1, 'wanted', pins), struck]).bench.inHand.wanted).toEqual({})
  })

  it('takes no state that is none, and no day that is none', () => {
    const ok = (body: object) => kinds.supplied.safeParse({ item: 'x', ...body }).success
    expect(ok({ state: 'in-hand' })).toBe(true)
    expect(ok({ state: 'lost' })).toBe(false)
    expect(ok({ state: 'wanted', expected: 'soon' })).toBe(false)
  })
})
