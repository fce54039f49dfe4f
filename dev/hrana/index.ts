export type { Fault, FaultSwitches } from './faults'
export type { Counts } from './pipelines'
export { type HranaOptions, type HranaServer, startHrana } from './start-hrana'
