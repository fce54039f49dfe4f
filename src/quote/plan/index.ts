export {
  conflictsOf,
  firstFree,
  leftBy,
} from './beside'
export { type Booking, bookings, type Conflict, type Taken, takenBy } from './bookings'

export { type DatedJob, followOn, type JobNow } from './follow-on'

export type { PlanLimits } from './plan-job'

export { replan } from './replan'

export type {
  After,
  Task,
} from './task'
