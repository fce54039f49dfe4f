import { allocate, sumOf, taxOn } from '../kernel/money'
import type { Adjustment } from './adjustment'
import type { StudioSettings } from './context'
import type { EstimateOffer, OfferLine } from './estimate-types'
import type { RunStep } from './needs'
import { likeliest, meanMinutes } from './plan-of'
import { byTimeCap, depositOn, discountLines, grossRange, offerFrom, outwardRange } from './price'
import { pertMean, type Spread } from './spread'

type Cost = {
  readonly id: string
  readonly order: number
  readonly minutes: number
  readonly cost: number
  readonly cap: { readonly capMinutes: number; readonly capAmount: number } | null
}

const perHour = (s: StudioSettings): number => s.ratePerHour + s.materialsPerHour

const costsOf = (
  runs: readonly RunStep[],
  s: StudioSettings,
  pace: (id: string) => number,
): readonly Cost[] =>
  runs.map((run) => {
    const { id, order } = run.rule
    const now = likeliest(run)
    const minutes = run.chance * meanMinutes(run, pace(id))
    const money = now?.need.money ? run.chance * pertMean(now.need.money) : 0
    const capMinutes = now?.byTime?.capMinutes
    const cap =
      capMinutes === undefined ? null : { capMinutes, capAmount: byTimeCap(perHour(s), capMinutes) }
    return { id, order, minutes, cost: (minutes * perHour(s)) / 60 + money, cap }
  })

const weightOf = (c: Cost): number => Math.max(1, Math.round(c.cost))

/**
 * Shares a pool over lines by expected cost. A line offered by time never carries more than its cap;
 * what it cannot carry goes to the others.
 */
const shareOut = (pool: number, costs: readonly Cost[]): ReadonlyMap<string, number> => {
  const amounts = new Map<string, number>()
  if (costs.length === 0) return amounts
  const first = allocate(pool, costs.map(weightOf))
  let left = 0
  costs.forEach((c, i) => {
    const amount = first[i] ?? 0
    const taken = c.cap === null ? amount : Math.min(amount, c.cap.capAmount)
    amounts.set(c.id, taken)
    left += amount - taken
  })
  const fixed = costs.filter((c) => c.cap === null)
  const rest = left === 0 || fixed.length === 0 ? [] : allocate(left, fixed.map(weightOf))
  fixed.forEach((c, i) => {
    amounts.set(c.id, (amounts.get(c.id) ?? 0) + (rest[i] ?? 0))
  })
  return amounts
}

const setByHand = (adjustments: readonly Adjustment[]): ReadonlyMap<string, number> => {
  const set = new Map<string, number>()
  for (const a of adjustments) {
    if (a.kind === 'price') set.set(a.step, a.amount)
    if (a.kind === 'add' && a.amount !== undefined) set.set(a.step, a.amount)
  }
  return set
}

const sumBy = (adjustments: readonly Adjustment[], kind: 'discount' | 'surcharge'): number =>
  sumOf(adjustments.flatMap((a) => (a.kind === kind ? [a.amount] : [])))

/**
 * The offer: at the studio's percentile and never below the mean, shared out over the lines by what
 * each is expected to cost, so that the lines sum to it to the last unit. Prices set by hand stay as
 * set; a discount is taken off the others in proportion.
 */
export const offerOf = (
  runs: readonly RunStep[],
  found: Spread,
  s: StudioSettings,
  adjustments: readonly Adjustment[],
  pace: (id: string) => number,
): EstimateOffer => {
  const costs = [...costsOf(runs, s, pace)].sort((a, b) => a.order - b.order)
  const set = setByHand(adjustments)
  const wanted = offerFrom({
    spreadPrice: {
      mean: found.price.mean,
      quantile: found.priceQuantile,
      chanceAtMost: found.chancePriceAtMost,
    },
    percentile: s.offerPercentile,
    taxRateMillionths: s.taxMillionths,
    taxRounding: s.taxRounding,
    taxBasis: s.taxBasis,
    step: 1,
  }).net
  const all = costs.reduce((sum, c) => sum + c.cost, 0)
  const open = costs.filter((c) => !set.has(c.id))
  const openCost = open.reduce((sum, c) => sum + c.cost, 0)
  const pool = set.size === 0 || all === 0 ? wanted : Math.round((wanted * openCost) / all)
  const shares = [...shareOut(pool, open)].map(([id, amount]) => ({
    id,
    kind: 'fixed' as const,
    amount,
  }))
  const discount = Math.min(sumBy(adjustments, 'discount'), sumOf(shares.map((l) => l.amount)))
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
      ...(c.cap && !set.has(c.id) ? { byTime: c.cap } : {}),
    }
  })
  const surcharge = sumBy(adjustments, 'surcharge')
  if (surcharge > 0) lines.push({ step: 'surcharge', amount: surcharge, minutes: 0 })
  const nets = lines.map((l) => l.amount)
  const net = sumOf(nets)
  const tax = taxOn(nets, s.taxMillionths, s.taxRounding, s.taxBasis)
  return {
    lines,
    net,
    tax,
    total: net + tax,
    chanceEnough: Math.round(found.chancePriceAtMost(net) * 100) / 100,
    deposit: depositOn(
      net + tax,
      { kind: 'share', basisPoints: Math.round(s.depositMillionths / 100), step: 1 },
      'down',
    ).deposit,
    ...rangeBeside(found, s, net - wanted),
  }
}

/** Low and high beside the offer, outward to the studio's step; a change by hand moves the near end. */
const rangeBeside = (found: Spread, s: StudioSettings, moved: number) => {
  const range = {
    low: Math.max(0, found.price.p10 + Math.min(0, moved)),
    likely: found.price.p50,
    high: found.price.p90 + Math.max(0, moved),
  }
  const gross = s.pricesWithTax ? grossRange(range, s.taxMillionths) : range
  return { ...outwardRange(gross, s.roundTo), likely: Math.round(gross.likely) }
}
