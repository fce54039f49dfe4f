import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { taxOn } from '../kernel/money'
import { type AccountBench, type AccountOffer, accountFrom } from './account'

const TAX = { millionths: 200_000, rounding: 'half-up', basis: 'total' } as const
const offer: AccountOffer = {
  lines: [
    { step: 'wash', amount: 10_000, minutes: 120 },
    { step: 'polish', amount: 30_000, minutes: 300 },
    {
      step: 'film',
      amount: 12_000,
      minutes: 120,
      byTime: { capMinutes: 240, capAmount: 24_000 },
    },
    { step: 'travel', amount: 2_000, minutes: 0 },
  ],
  net: 54_000,
  tax: 10_800,
}
const done = (minutes: number) => ({ state: 'done' as const, minutes })
const all: AccountBench = { wash: done(100), polish: done(420), film: done(120) }

// Worked by hand: a fixed line keeps its price whatever the time; one by time is 100.00 an hour here.
describe('accountFrom', () => {
  it('charges a whole job as it was offered, with the offer’s own tax', () => {
    const a = accountFrom(offer, all, [], TAX, false)
    expect(a.lines.map((l) => [l.step, l.offered, l.charged, l.planned, l.used, l.done])).toEqual([
      ['wash', 10_000, 10_000, 120, 100, 'done'],
      ['polish', 30_000, 30_000, 300, 420, 'done'],
      ['film', 12_000, 12_000, 120, 120, 'done'],
      ['travel', 2_000, 2_000, 0, null, 'no-step'],
    ])
    expect([a.net, a.tax, a.total]).toEqual([54_000, 10_800, 64_800])
  })

  it('charges a line by time by its minutes, never above its cap', () => {
    const film = (minutes: number) =>
      accountFrom(offer, { ...all, film: done(minutes) }, [], TAX, false).lines[2]?.charged
    expect([film(60), film(150), film(240), film(500)]).toEqual([6_000, 15_000, 24_000, 24_000])
    // Nobody wrote time down: as offered.
    const { film: _, ...silent } = all
    expect(accountFrom(offer, silent, [], TAX, false).lines[2]?.charged).toBe(12_000)
  })

  it('charges of half a job what was done, what was begun by its share, and the way', () => {
    const half: AccountBench = {
      wash: done(120),
      polish: { state: 'broken-off', minutes: 100 },
    }
    const a = accountFrom(offer, half, [], TAX, true)
    // 100.00, a third of 300.00, and 20.00 for the way.
    expect(a.lines.map((l) => l.charged)).toEqual([10_000, 10_000, 0, 2_000])
    expect([a.net, a.tax, a.total]).toEqual([22_000, 4_400, 26_400])
  })

  it('adds the extras with the tax they were agreed with', () => {
    const extra = { extra: 'e', amount: 3_333, tax: 667, minutes: 20 }
    const a = accountFrom(offer, all, [extra], TAX, false)
    expect([a.net, a.tax, a.total]).toEqual([57_333, 11_467, 68_800])
  })

  it('sums to the last minor unit, whatever was done and however tax is rounded', () => {
    const line = fc.record({
      amount: fc.integer({ min: 0, max: 5_000_000 }),
      minutes: fc.integer({ min: 0, max: 6_000 }),
      used: fc.option(fc.integer({ min: 0, max: 20_000 }), { nil: null }),
      state: fc.constantFrom('begun', 'broken-off', 'done'),
      cap: fc.option(
        fc.record({
          capMinutes: fc.integer({ min: 1, max: 6_000 }),
          capAmount: fc.integer({ min: 0, max: 5_000_000 }),
        }),
        { nil: null },
      ),
    })
    const tax = fc.record({
      millionths: fc.integer({ min: 0, max: 1_000_000 }),
      rounding: fc.constantFrom('half-up' as const, 'half-even' as const, 'down' as const),
      basis: fc.constantFrom('line' as const, 'total' as const),
    })
    fc.assert(
      fc.property(fc.array(line, { maxLength: 12 }), tax, fc.boolean(), (rows, t, part) => {
        const lines = rows.map((r, i) => ({
          step: `s${i}`,
          amount: r.amount,
          minutes: r.minutes,
          ...(r.cap ? { byTime: r.cap } : {}),
        }))
        const net = lines.reduce((sum, l) => sum + l.amount, 0)
        const amounts = lines.map((l) => l.amount)
        const given = { lines, net, tax: taxOn(amounts, t.millionths, t.rounding, t.basis) }
        const bench = Object.fromEntries(
          rows.flatMap((r, i) =>
            r.used === null ? [] : [[`s${i}`, { state: r.state, minutes: r.used }] as const],
          ),
        ) as AccountBench
        const a = accountFrom(given, bench, [], t, part)
        expect(a.net).toBe(a.lines.reduce((sum, l) => sum + l.charged, 0))
        expect(a.total).toBe(a.net + a.tax)
        const charged = a.lines.map((l) => l.charged)
        expect(a.tax).toBe(taxOn(charged, t.millionths, t.rounding, t.basis))
        for (const [i, l] of a.lines.entries()) {
          expect(l.charged).toBeGreaterThanOrEqual(0)
          const cap = rows[i]?.cap
          const most = cap && l.used !== null ? cap.capAmount : l.offered
          expect(l.charged).toBeLessThanOrEqual(most)
        }
      }),
    )
  })
})
