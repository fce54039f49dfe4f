import { sumOf } from '../kernel/money'
import type { Adjustment } from './adjustment'
import type { StudioSettings } from './context'
import type { OfferLine } from './estimate-types'
import { bayDayCharge, discountOf, subletCharge, travelCharge } from './price'

/** What stands beside the work on an offer, each as a line of its own. */
export type Charges = {
  readonly lines: readonly OfferLine[]
  /** The part of them that is spent again: travel, bay and outside work, but no surcharge. */
  readonly spent: number
}

const sumBy = <K extends Adjustment['kind']>(
  adjustments: readonly Adjustment[],
  kind: K,
  amount: (a: Extract<Adjustment, { kind: K }>) => number,
): number =>
  sumOf(
    adjustments.flatMap((a) =>
      a.kind === kind ? [amount(a as Extract<typeof a, { kind: K }>)] : [],
    ),
  )

/**
 * The money off that the adjustments ask for, on this much work: amounts as they are, shares of the
 * work rounded half up, together never more than the work.
 */
export const discountIn = (adjustments: readonly Adjustment[], work: number): number =>
  Math.min(
    work,
    sumBy(adjustments, 'discount', (a) => a.amount) +
      sumBy(adjustments, 'discount-share', (a) => discountOf(work, a.basisPoints, 'half-up')),
  )

/**
 * Outside work, travel, bay days and surcharges as whole net minor units; rounded half up. A charge
 * that comes to nothing has no line.
 */
export const chargesOf = (adjustments: readonly Adjustment[], s: StudioSettings): Charges => {
  const margin = s.subletMarginMillionths ?? 0
  const outside = adjustments.flatMap((a): OfferLine[] => {
    if (a.kind !== 'sublet') return []
    const amount = subletCharge(a.cost, a.marginMillionths ?? margin, 'half-up')
    return [{ step: a.step, name: a.name, amount, minutes: 0 }]
  })
  const travel = sumBy(adjustments, 'travel', (a) =>
    travelCharge(a.metres, s.travelFreeMetres ?? 0, s.travelPerKm ?? 0, 'half-up'),
  )
  const days = sumBy(adjustments, 'bay-days', (a) => a.days)
  const bay = bayDayCharge(days, s.bayDaysIncluded ?? 0, s.bayDayRate)
  const surcharge = sumBy(adjustments, 'surcharge', (a) => a.amount)
  const lines = [
    ...outside,
    { step: 'travel', amount: travel, minutes: 0 },
    { step: 'bay-days', amount: bay, minutes: 0 },
    { step: 'surcharge', amount: surcharge, minutes: 0 },
  ].filter((l) => l.amount > 0 || l.minutes > 0)
  return { lines, spent: sumOf(lines.map((l) => l.amount)) - surcharge }
}
