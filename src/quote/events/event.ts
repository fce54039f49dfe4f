import { vehicleKind } from '../../intake/facts/vehicle-kind'
import type { Context, ThreePoint } from '../context'
import type { EventRule } from '../rules'

export const OWN = 'own estimate'

/** Three-point figures, each times `factor`, in whole units. */
export const three = (
  optimistic: number,
  mode: number,
  pessimistic: number,
  factor = 1,
): ThreePoint => ({
  optimistic: Math.round(optimistic * factor),
  mode: Math.round(mode * factor),
  pessimistic: Math.round(pessimistic * factor),
})

/** Money in minor units as shares of the studio's hourly rate, so that it fits any currency. */
export const ofRate = (c: Context, low: number, likely: number, high: number): ThreePoint =>
  three(low, likely, high, c.settings.ratePerHour)

/** An event of cars only; its probabilities and impacts are our own estimates. */
export const event = (id: string, need: EventRule['need']): EventRule => ({
  id,
  need: (r, c) => (vehicleKind(r) === 'car' ? need(r, c) : null),
  source: OWN,
})
