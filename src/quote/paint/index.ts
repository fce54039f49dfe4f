/** Public face of the paint model: how much is there, how much may come off, and what that buys. */
export { assessCar, type PaintAssessment, type PaintInput } from './assess-car'
export type { PanelAssessment } from './assess-panel'
export { limits } from './constants'
export { type Defect, expectationOf } from './expectation'
export { e376Band } from './gauge'

export type { SetsDone } from './removed'
export {
  type PaintStepId,
  removalOf,
  type SequenceId,
  sequenceById,
  sequenceIds,
} from './sequences'
export { defaultSettings } from './settings'

export * from './types'
export { allowed, type Permission } from './verdict'
