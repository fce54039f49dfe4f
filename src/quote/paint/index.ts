/** Public face of the paint model: how much is there, how much may come off, and what that buys. */
export { assessCar, type PaintAssessment, type PaintInput } from './assess-car'
export type { PanelAssessment } from './assess-panel'
export { type LimitKey, limits, type PaintSettings } from './constants'
export { type Defect, type Expectation, expectationOf, shareRemoved } from './expectation'
export { e376Band } from './gauge'
export { zoneAllowsMachine } from './guards'
export type { RemovedInJob, SetsDone } from './removed'
export {
  type PaintSequence,
  type PaintStepId,
  removal95,
  removalOf,
  type SequenceId,
  sequenceById,
  sequenceIds,
  sequences,
  stepRemoval,
} from './sequences'
export { type ClampNote, clampSettings, defaultSettings } from './settings'
export { type ReadingPlan, readingPlan, spotLimits } from './spot-rules'
export * from './types'
export { allowed, type Consent, type Permission, type Permit } from './verdict'
