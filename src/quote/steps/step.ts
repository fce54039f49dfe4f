import { vehicleKind } from '../../intake/facts/vehicle-kind'
import type { StepRule } from '../rules'

type Given = Pick<StepRule, 'id' | 'track' | 'order' | 'need' | 'source'> &
  Partial<StepRule> & {
    /** Also for what is not a car; absent: cars only. */
    readonly anyVehicle?: true
  }

/** A step with the plain defaults: one person, in the bay, may pause, no kit, no cautions, cars only. */
export const step = ({ anyVehicle, need, byTime, ...given }: Given): StepRule => ({
  after: [],
  crewMax: 1,
  machine: false,
  bay: true,
  lift: false,
  pausable: true,
  kit: [],
  cautions: () => [],
  ...given,
  ...(byTime ? { byTime } : {}),
  need: (r, c) => (anyVehicle || vehicleKind(r) === 'car' ? need(r, c) : null),
})
