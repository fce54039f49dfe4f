import { type CabinClass, cabinClass } from '../../intake/facts/cabin-class'
import { cabinWork } from '../../intake/facts/cabin-scope'
import { budget } from '../../intake/questions/budget'
import type { Reader } from '../../intake/reader'
import type { Context } from '../context'

/** Hours below which a budget pays for a dry clean at a fixed time only (own estimate). */
export const WET_CLEAN_HOURS = 6

/** Person-hours the owner's budget pays for, tax taken off; undefined without a budget or a rate. */
export const budgetHours = (r: Reader, c: Context): number | undefined => {
  const money = r.value(budget)
  const { ratePerHour, taxMillionths } = c.settings
  if (money === undefined || money <= 0 || ratePerHour <= 0) return undefined
  return money / (1 + taxMillionths / 1_000_000) / ratePerHour
}

/** True when the budget does not reach a wet clean of the cabin. */
export const budgetIsTight = (r: Reader, c: Context): boolean =>
  (budgetHours(r, c) ?? WET_CLEAN_HOURS) < WET_CLEAN_HOURS

/** The class the cabin is worked at: a tight budget buys a tidy cabin's time, whatever its state. */
export const workedClass = (r: Reader, c: Context): CabinClass | undefined => {
  const state = cabinWork(r) ? cabinClass(r) : undefined
  return state === undefined || state === 'tidy' || !budgetIsTight(r, c) ? state : 'tidy'
}
