import { percentOf, rateOf } from '../../kernel/money'
import { type RoundingMode, roundProduct, roundToStep } from '../../kernel/rounding'

/** A deposit: a share of the gross in basis points, or a fixed amount; in whole multiples of step. */
export type DepositRule =
  | { readonly kind: 'none' }
  | { readonly kind: 'share'; readonly basisPoints: number; readonly step: number }
  | { readonly kind: 'amount'; readonly amount: number }

/** The deposit due on a gross amount, never more than the gross itself. The balance is the difference. */
export const depositOn = (
  gross: number,
  rule: DepositRule,
  mode: RoundingMode,
): { readonly deposit: number; readonly balance: number } => {
  const wanted =
    rule.kind === 'none'
      ? 0
      : rule.kind === 'amount'
        ? rule.amount
        : roundToStep(percentOf(gross, rule.basisPoints, mode), rule.step, mode)
  const deposit = Math.min(gross, Math.max(0, wanted))
  return { deposit, balance: gross - deposit }
}

/** The discount meant by a share of the net in basis points, whole minor units. */
export const discountOf = (net: number, basisPoints: number, mode: RoundingMode): number =>
  percentOf(net, basisPoints, mode)

/** The net, raised to the minimum charge; what the raise adds is stated so that it can be shown. */
export const withMinimumCharge = (
  net: number,
  minimum: number,
): { readonly net: number; readonly raisedBy: number } =>
  net >= minimum ? { net, raisedBy: 0 } : { net: minimum, raisedBy: minimum - net }

/**
 * Travel to the car and back: metres one way, free radius in metres, minor units per km of the way beyond
 * it, both directions, in whole minor units.
 */
export const travelCharge = (
  metresOneWay: number,
  freeMetres: number,
  perKm: number,
  mode: RoundingMode,
): number => roundProduct(2 * Math.max(0, metresOneWay - freeMetres), perKm, 1000, mode)

/** Days a car holds a bay beyond those included, at a rate per day. Whole days, every begun day counts. */
export const bayDayCharge = (days: number, includedDays: number, perDay: number): number =>
  Math.max(0, Math.ceil(days - 1e-9) - includedDays) * perDay

/** Work by others: their cost with the studio's margin on top (millionths of the cost). */
export const subletCharge = (cost: number, marginMillionths: number, mode: RoundingMode): number =>
  cost + rateOf(cost, marginMillionths, mode)
