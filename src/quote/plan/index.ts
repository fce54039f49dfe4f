export {
  type Begin,
  conflictsOf,
  firstFree,
  leftBy,
  type StaffOn,
} from './beside'
export { type Booking, bookings, type Conflict, type Taken, takenBy } from './bookings'
export { type CriticalPath, criticalPath, type TaskTimes } from './critical-path'
export { type DatedJob, followOn, type JobNow } from './follow-on'
export type { Block, Drying, Hold, JobPlan, Moment, PlanDay } from './job-plan'
export type { Linked, NetworkError } from './network'
export { type PlanError, type PlanLimits, planJob } from './plan-job'
export { type LabourRatios, planReady, type ReadyPlan } from './ready'
export { type Done, type PeopleFrom, replan } from './replan'
export { type Activity, type Schedule, type ScheduleError, schedule } from './schedule'
export {
  type After,
  CREW_RATE,
  type LagKind,
  MACHINE_MINUTES,
  SET_UP_MINUTES,
  STARTS,
  type Studio,
  type Task,
  type Window,
} from './task'
