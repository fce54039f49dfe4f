import { sumOf, taxOn } from '../kernel/money'
import type { Adjustment } from './adjustment'
import { chargesOf, discountIn } from './charges-of'
import type { StudioSettings } from './context'
import type { EstimateOffer, OfferLine } from './estimate-types'
import type { RunStep } from './needs'
import { likeliest, meanMinutes } from './plan-of'
import {
  byTimeCap,
  type DraftLine,
  depositOn,
  discountLines,
  grossRange,
  offerNet,
  outwardRange,
  shareLines,
  withMinimumCharge,
} from './price'
import { pertMean, type Spread } from './spread'

type Cost = DraftLine & {
  readonly order: number
  readonly minutes: number
  readonly byTime: OfferLine['byTime'] | null
}

const perHour = (s: StudioSettings): number => s.ratePerHour + s.materialsPerHour

const costOf = (run: RunStep, s: StudioSettings, pace: (id: string) => number): Cost => {
  const { id, order } = run.rule
  const now = likeliest(run)
  const minutes = run.chance * meanMinutes(run, pace(id))
  const money = now?.need.money ? run.chance * pertMean(now.need.money) : 0
  const expected = (minutes * perHour(s)) / 60 + money
  const capMinutes = now?.byTime?.capMinutes
  if (capMinutes === undefined) return { id, order, minutes, expected, byTime: null }
  const capAmount = byTimeCap(perHour(s), capMinutes)
  return { id, order, minutes, expected, cap: capAmount, byTime: { capMinutes, capAmount } }
}

const setByHand = (adjustments: readonly Adjustment[]): ReadonlyMap<string, number> => {
  const set = new Map<string, number>()
  for (const a of adjustments) {
    if (a.kind === 'price') set.set(a.step, a.amount)
    if (a.kind === 'add' && a.amount !== undefined) set.set(a.step, a.amount)
  }
  return set
}

const expectedOf = (costs: readonly Cost[]): number => costs.reduce((sum, c) => sum + c.expected, 0)

/** The work line by line: shared out by cost, prices set by hand as set, money off the others. */
const workLines = (
  costs: readonly Cost[],
  wanted: number,
  adjustments: readonly Adjustment[],
): { readonly lines: readonly OfferLine[]; readonly discount: number } => {
  const set = setByHand(adjustments)
  const open = costs.filter((c) => !set.has(c.id))
  const all = expectedOf(costs)
  const pool = set.size === 0 || all === 0 ? wanted : Math.round((wanted * expectedOf(open)) / all)
  const shares = shareLines(pool, open)
  const discount = discountIn(adjustments, sumOf(shares.map((l) => l.amount)))
  const amounts = new Map(discountLines(shares, discount).map((l) => [l.id, l.amount]))
  const named = new Map(
    adjustments.flatMap((a) => (a.kind === 'add' ? [[a.step, a.name] as const] : [])),
  )
  const lines = costs.map((c): OfferLine => {
    const name = named.get(c.id)
    return {
      step: c.id,
      ...(name === undefined ? {} : { name }),
      amount: set.get(c.id) ?? amounts.get(c.id) ?? 0,
      minutes: Math.round(c.minutes),
      ...(c.byTime && !set.has(c.id) ? { byTime: c.byTime } : {}),
    }
  })
  return { lines, discount }
}

/** Where money off or a set price takes the work below the smallest charge, the rest is a line. */
const upToMinimum = (
  work: readonly OfferLine[],
  s: StudioSettings,
  adjustments: readonly Adjustment[],
): readonly OfferLine[] => {
  const waived = adjustments.some((a) => a.kind === 'remove' && a.step === 'minimum-charge')
  if (work.length === 0 || waived) return []
  const { raisedBy } = withMinimumCharge(sumOf(work.map((l) => l.amount)), s.minimumCharge)
  return raisedBy === 0 ? [] : [{ step: 'minimum-charge', amount: raisedBy, minutes: 0 }]
}

/**
 * The offer: at the studio's percentile and never below the mean, shared out over the lines by what
 * each is expected to cost, so that the lines sum to it to the last unit. Prices set by hand stay as
 * set; money off comes off the others in proportion; charges stand as lines of their own.
 */
export const offerOf = (
  runs: readonly RunStep[],
  found: Spread,
  s: StudioSettings,
  adjustments: readonly Adjustment[],
  pace: (id: string) => number,
): EstimateOffer => {
  const costs = runs.map((run) => costOf(run, s, pace)).sort((a, b) => a.order - b.order)
  const wanted = offerNet(
    { mean: found.price.mean, quantile: found.priceQuantile },
    s.offerPercentile,
  )
  const { lines: work, discount } = workLines(costs, wanted, adjustments)
  const charges = chargesOf(adjustments, s)
  const lines = [...work, ...upToMinimum(work, s, adjustments), ...charges.lines]
  const nets = lines.map((l) => l.amount)
  const net = sumOf(nets)
  const tax = taxOn(nets, s.taxMillionths, s.taxRounding, s.taxBasis)
  const certain = sumOf(charges.lines.map((l) => l.amount)) - discount
  return {
    lines,
    net,
    tax,
    total: net + tax,
    chanceEnough: Math.round(found.chancePriceAtMost(net - charges.spent) * 100) / 100,
    deposit: depositOn(
      net + tax,
      { kind: 'share', basisPoints: Math.round(s.depositMillionths / 100), step: 1 },
      'down',
    ).deposit,
    ...rangeBeside(found, s, certain, net - wanted - certain),
  }
}

/**
 * Low and high beside the offer, outward to the studio's step. What is certain (charges, money off)
 * moves all of it; a price set by hand moves the near end alone.
 */
const rangeBeside = (found: Spread, s: StudioSettings, certain: number, moved: number) => {
  const range = {
    low: Math.max(0, found.price.p10 + certain + Math.min(0, moved)),
    likely: Math.max(0, found.price.p50 + certain),
    high: Math.max(0, found.price.p90 + certain + Math.max(0, moved)),
  }
  const gross = s.pricesWithTax ? grossRange(range, s.taxMillionths) : range
  return { ...outwardRange(gross, s.roundTo), likely: Math.round(gross.likely) }
}
