export type { Fault } from './faults'

export { type HranaServer, startHrana } from './start-hrana'
