import { body } from '../questions/body'
import type { Reader } from '../reader'

export const VEHICLE_KINDS = ['car', 'motorcycle', 'boat', 'motorhome'] as const
export type VehicleKind = (typeof VEHICLE_KINDS)[number]

/** What stands in the bay; everything but a car is scoped by the hour only. */
export const vehicleKind = (r: Reader): VehicleKind => {
  const b = r.value(body)
  return b === 'motorcycle' || b === 'boat' || b === 'motorhome' ? b : 'car'
}
