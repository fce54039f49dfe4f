import Decimal from 'decimal.js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Answers } from '../intake/answers'
import { sumOf } from '../kernel/money'
import type { Adjustment } from './adjustment'
import type { StudioSettings } from './context'
import { type Estimated, estimate } from './estimate'
import {
  DEFAULT_PROFILE,
  engineSettings,
  type StudioProfile,
  studioProfile,
} from './studio-profile'

const answers: Answers = {
  body: { value: 'saloon' },
  size: { value: 'mid' },
  dangers: { value: [] },
  year: { value: 2018 },
  services: { value: ['paint', 'protect', 'cabin'] },
  wish: { value: 'improve' },
  colour: { value: 'mid' },
}

const studio = (more: Partial<StudioProfile> = {}): StudioSettings =>
  engineSettings(studioProfile.parse({ ...DEFAULT_PROFILE, ...more }), 1, [])

const offered = (adjustments: readonly Adjustment[], settings = studio()): Estimated =>
  estimate({ answers, settings, today: '2026-06-01', readings: [], adjustments })

const why = 'agreed by telephone'
const plain = offered([])
const lineOf = (e: Estimated, step: string) => e.offer.lines.find((l) => l.step === step)
const anyStep = plain.offer.lines.map((l) => l.step)

const adjustment: fc.Arbitrary<Adjustment> = fc
  .oneof(
    fc.record({ kind: fc.constant('discount' as const), amount: fc.nat(200_000) }),
    fc.record({ kind: fc.constant('discount-share' as const), basisPoints: fc.nat(10_000) }),
    fc.record({ kind: fc.constant('surcharge' as const), amount: fc.nat(50_000) }),
    fc.record({ kind: fc.constant('travel' as const), metres: fc.nat(200_000) }),
    fc.record({ kind: fc.constant('bay-days' as const), days: fc.nat(20) }),
    fc.record({
      kind: fc.constant('sublet' as const),
      step: fc.constantFrom('glass-trade', 'tint', 'wash'),
      name: fc.constant('work by another trade'),
      cost: fc.nat(90_000),
    }),
    fc.record({
      kind: fc.constant('by-time' as const),
      step: fc.constantFrom(...anyStep),
      capMinutes: fc.integer({ min: 1, max: 600 }),
    }),
    fc.record({
      kind: fc.constant('price' as const),
      step: fc.constantFrom(...anyStep),
      amount: fc.nat(90_000),
    }),
    fc.record({ kind: fc.constant('remove' as const), step: fc.constantFrom(...anyStep) }),
  )
  .map((a) => ({ ...a, why }))

/** Currencies with 0, 2, 3 and 4 places (ISO 4217), each with an hourly rate of some sixty units. */
const money = fc.constantFrom(
  { currency: 'JPY', ratePerHour: 60, roundTo: 1 },
  { currency: 'EUR', ratePerHour: 6_000, roundTo: 1_000 },
  { currency: 'KWD', ratePerHour: 60_000, roundTo: 5_000 },
  { currency: 'CLF', ratePerHour: 600_000, roundTo: 1 },
)
const settings = fc
  .record({
    money,
    taxMillionths: fc.constantFrom(0, 66_250, 200_000, 255_000),
    taxRounding: fc.constantFrom('half-up' as const, 'half-even' as const, 'down' as const),
    taxBasis: fc.constantFrom('line' as const, 'total' as const),
    pricesWithTax: fc.boolean(),
    minimumCharge: fc.constantFrom(0, 9_000, 100_000),
    travelPerKm: fc.nat(200),
    bayDaysIncluded: fc.nat(3),
    subletMarginMillionths: fc.constantFrom(0, 150_000),
  })
  .map(({ money: m, ...more }) => studio({ ...m, ...more }))

const ROUND = {
  'half-up': Decimal.ROUND_HALF_UP,
  'half-even': Decimal.ROUND_HALF_EVEN,
  down: Decimal.ROUND_DOWN,
} as const

const decimalTax = (nets: readonly number[], s: StudioSettings): number => {
  const each = s.taxBasis === 'line' ? nets : [nets.reduce((a, b) => a + b, 0)]
  return each.reduce(
    (sum, n) =>
      sum +
      new Decimal(n)
        .mul(s.taxMillionths)
        .div(1e6)
        .toDecimalPlaces(0, ROUND[s.taxRounding])
        .toNumber(),
    0,
  )
}

describe('the offer, whatever was changed by hand', () => {
  it('has lines of whole units that sum to the net, and states the tax decimal.js comes to', () => {
    fc.assert(
      fc.property(fc.array(adjustment, { maxLength: 8 }), settings, (list, s) => {
        const { offer } = offered(list, s)
        const nets = offer.lines.map((l) => l.amount)
        expect(sumOf(nets)).toBe(offer.net)
        expect(offer.tax).toBe(decimalTax(nets, s))
        expect(offer.total).toBe(offer.net + offer.tax)
        expect(new Set(offer.lines.map((l) => l.step)).size).toBe(offer.lines.length)
        for (const l of offer.lines) {
          expect(l.amount).toBeGreaterThanOrEqual(0)
          if (l.byTime) expect(l.amount).toBeLessThanOrEqual(l.byTime.capAmount)
        }
        expect(offer.low).toBeLessThanOrEqual(offer.likely)
        expect(offer.likely).toBeLessThanOrEqual(offer.high)
        expect([offer.low % s.roundTo, offer.high % s.roundTo]).toEqual([0, 0])
        expect(offer.deposit).toBeLessThanOrEqual(offer.total)
      }),
      { numRuns: 60 },
    )
  })

  it('without changes is never below the mean, nor below the smallest charge', () => {
    fc.assert(
      fc.property(settings, (s) => {
        const { offer, price } = offered([], s)
        expect(offer.net).toBeGreaterThanOrEqual(price.mean - 1)
        expect(offer.net).toBeGreaterThanOrEqual(s.minimumCharge)
        expect(lineOf(offered([], s), 'minimum-charge')).toBeUndefined()
      }),
      { numRuns: 20 },
    )
  })

  it('takes a discount off to the last unit', () => {
    fc.assert(
      fc.property(fc.nat(30_000), fc.nat(3_000), (amount, basisPoints) => {
        const share = Math.floor((plain.offer.net * basisPoints + 5_000) / 10_000)
        const both = offered([
          { kind: 'discount', amount, why },
          { kind: 'discount-share', basisPoints, why },
        ])
        const floor = studio().minimumCharge
        expect(both.offer.net).toBe(Math.max(floor, plain.offer.net - amount - share))
      }),
      { numRuns: 30 },
    )
  })
})

describe('charges', () => {
  const s = studio({
    travelPerKm: 60,
    travelFreeMetres: 10_000,
    bayDaysIncluded: 2,
    subletMarginMillionths: 150_000,
  })
  const charged = offered(
    [
      { kind: 'travel', metres: 12_345, why },
      { kind: 'bay-days', days: 3, why },
      { kind: 'sublet', step: 'glass-trade', name: 'A new windscreen', cost: 12_345, why },
      { kind: 'sublet', step: 'tint', name: 'Tint', cost: 1_000, marginMillionths: 0, why },
      { kind: 'surcharge', amount: 700, why },
    ],
    s,
  )
  it('stand as lines of their own beside the same work', () => {
    expect(charged.offer.lines.slice(plain.offer.lines.length)).toEqual([
      { step: 'glass-trade', name: 'A new windscreen', amount: 14_197, minutes: 0 },
      { step: 'tint', name: 'Tint', amount: 1_000, minutes: 0 },
      { step: 'travel', amount: 281, minutes: 0 },
      { step: 'bay-days', amount: 4_000, minutes: 0 },
      { step: 'surcharge', amount: 700, minutes: 0 },
    ])
    expect(charged.offer.net - plain.offer.net).toBe(14_197 + 1_000 + 281 + 4_000 + 700)
    expect(charged.plan).toEqual(plain.plan)
  })
  it('move the whole range, and only the surcharge makes the work likelier to be paid', () => {
    const more = Math.round(20_178 * 1.2)
    expect(Math.abs(charged.offer.likely - plain.offer.likely - more)).toBeLessThanOrEqual(1)
    expect(charged.offer.low).toBeGreaterThan(plain.offer.low)
    expect(charged.offer.chanceEnough).toBeGreaterThanOrEqual(plain.offer.chanceEnough)
    const noSurcharge = offered([{ kind: 'travel', metres: 60_000, why }], s)
    expect(noSurcharge.offer.chanceEnough).toBe(plain.offer.chanceEnough)
  })
  it('bring work taken below the smallest charge back up to it, unless that is left out', () => {
    const discount = { kind: 'discount-share', basisPoints: 10_000, why } as const
    const raised = offered([discount])
    expect(lineOf(raised, 'minimum-charge')).toEqual({
      step: 'minimum-charge',
      amount: 9_000,
      minutes: 0,
    })
    const waived = offered([discount, { kind: 'remove', step: 'minimum-charge', why }])
    expect(waived.offer.net).toBe(0)
    expect(waived.adjusted.dropped).toEqual([])
  })
})

describe('by time', () => {
  const step = plain.offer.lines.find((l) => l.amount > 5_000)?.step ?? ''
  it('a step carries its cap on the offer and for the bench, and never more than it', () => {
    const e = offered([{ kind: 'by-time', step, capMinutes: 15, why }])
    // 64.00 an hour with materials, a quarter of an hour.
    expect(lineOf(e, step)).toMatchObject({
      amount: 1_600,
      byTime: { capMinutes: 15, capAmount: 1_600 },
    })
    expect(e.steps.find((s) => s.id === step)?.byTime).toEqual({ capMinutes: 15 })
    expect(e.offer.net).toBe(plain.offer.net)
  })
  it('is dropped with the step it was for, as are two pieces of outside work of one name', () => {
    const gone = { kind: 'by-time', step: 'no-such-step', capMinutes: 60, why } as const
    const first = { kind: 'sublet', step: 'tint', name: 'Tint', cost: 1, why } as const
    const e = offered([gone, first, { ...first, cost: 2 }])
    expect(e.adjusted.dropped).toEqual([gone, { ...first, cost: 2 }])
  })
})
