import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { callerOf, type Json } from '../support/caller'
import { openWorld, RUNTIMES, type World } from '../support/world'
import { wholeWay } from './stranger'

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0)

describe.each(RUNTIMES)('a stranger who knows only the contract, on %s', (runtime) => {
  let world: World
  beforeAll(async () => {
    world = await openWorld({ runtime })
  })
  afterAll(() => world.close())

  it('goes from the first answer to the record and has its data erased', async () => {
    const way = await wholeWay({ call: callerOf(world), ownerKey: world.ownerKey })
    expect(way.asked.length).toBeGreaterThanOrEqual(20)
    expect(new Set(way.asked).size).toBe(way.asked.length)
    for (const { offer } of [way.sent.estimate, way.made, way.quote]) {
      expect(sum(offer.lines.map((l: Json) => l.amount))).toBe(offer.net)
      expect(offer.net + offer.tax).toBe(offer.total)
    }
    expect(way.sent.estimate.price.low).toBeLessThan(way.sent.estimate.price.high)
    expect(way.quote.offer).toEqual(way.made.offer)
    // What was agreed, and the extra agreed to.
    expect(way.record.account.total).toBe(way.quote.offer.total + way.worked.extra.total)
    expect(way.worked.handed.account.total).toBe(way.record.account.total)
    expect(way.data.contact).toMatchObject([{ name: 'Robin Ash', email: 'robin.ash@example.org' }])
    const seqs = way.lines.lines.map((l: Json) => l.seq)
    expect(seqs).toEqual(seqs.map((_: number, i: number) => i + 1))
    expect(JSON.stringify(way.after)).not.toMatch(/robin/i)
    expect(way.after.state).toBe('handed-over')
  })
})
