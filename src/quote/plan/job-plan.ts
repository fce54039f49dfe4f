import type { LocalMinute } from '../../kernel/calendar-zone'

/** Work on one task without a break; minutes of the local day; people by seat number from 0. */
export type Block = {
  readonly from: number
  readonly to: number
  readonly people: readonly number[]
  readonly task: string
  readonly part?: { readonly n: number; readonly of: number }
}
/** A lag running: nothing is done on what `task` left to dry or cure until then. */
export type Drying = {
  readonly task: string
  readonly from: LocalMinute
  readonly until: LocalMinute
  readonly block: 'bay' | 'car'
}
export type PlanDay = {
  readonly date: string
  readonly setUp: { readonly from: number; readonly minutes: number; readonly people: number }
  readonly blocks: readonly Block[]
  /** Lags that begin on this day. */
  readonly drying: readonly Drying[]
}
export type Moment = LocalMinute & { readonly utc: string }
export type Hold = { readonly from: LocalMinute; readonly until: LocalMinute }
export type JobPlan = {
  readonly days: readonly PlanDay[]
  readonly startsAt: Moment
  readonly readyAt: Moment
  /** All people's minutes, the daily set-up included; outside trades left out. */
  readonly personMinutes: number
  /** Clock minutes from the first set-up to ready. */
  readonly elapsedMinutes: number
  /** Working minutes between first start and ready in which nobody works on the car. */
  readonly idleMinutes: number
  /** Task ids that hold the ready time, in order. */
  readonly critical: readonly string[]
  /** When the car keeps a bay or a lift, nights between two parts included. */
  readonly holds: { readonly bay: readonly Hold[]; readonly lift: readonly Hold[] }
}
