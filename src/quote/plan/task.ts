import type { Zone } from '../../kernel/calendar'

/**
 * How a lag passes. 'elapsed' runs by the clock, over nights and weekends (cure, drying);
 * 'working' runs in working minutes only.
 */
export type LagKind = 'elapsed' | 'working'

/** A predecessor: start no earlier than its end plus the lag (minutes). People are free meanwhile. */
export type After = {
  readonly id: string
  readonly lag: number
  readonly lagKind: LagKind
  /** What the lag keeps: the bay for this car, or only the car (it may stand elsewhere). */
  readonly block: 'bay' | 'car'
}

/** One step of a job; minutes are person-minutes when one person does it alone. */
export type Task = {
  readonly id: string
  readonly minutes: number
  readonly crewMax: 1 | 2
  readonly machine: boolean
  readonly needs: { readonly bay: boolean; readonly lift: boolean }
  readonly after: readonly After[]
  /** May pause overnight. Breaks within a day do not count as a pause. */
  readonly pausable: boolean
  /** Done by an outside trade: takes working time, no person of the studio. */
  readonly outside?: boolean
}

/** Hours of one local day, minutes of day, ascending and disjoint. */
export type Window = { readonly from: number; readonly to: number }

/** The studio's people and hours. `week` has 7 entries, Monday first (ISO 8601). */
export type Studio = {
  readonly people: number
  readonly bays: number
  readonly lifts: number
  readonly week: readonly (readonly Window[])[]
  /** 'YYYY-MM-DD' days on which nobody works. */
  readonly daysOff: readonly string[]
  readonly machineMinutesPerPersonDay: number
  readonly dayCapMinutes: number
  readonly setUpMinutesPerDay: number
  readonly zone: Zone
}

/** Two people on one task do 1.75 times one person's work (1.7-1.8: own estimate). */
export const CREW_RATE = 1.75
/** More people than this do not work on one car at once (own estimate). */
export const PEOPLE_PER_CAR = 4
/** A part shorter than this is not begun before a night or a machine limit (own estimate). */
export const SHORTEST_PART = 15
/** Randomised starts of the estimate; also used for the j30 comparison. */
export const STARTS = 24
/** 5.5 h machine work per person and day (5-6 h: own estimate). */
export const MACHINE_MINUTES = 330
/** Half an hour of setting up a day (common practice, no source). */
export const SET_UP_MINUTES = 30

/** Minutes a task takes with a crew: whole minutes, never 0 for work that is not 0. */
export const taskSpan = (minutes: number, crew: number): number => {
  if (!(minutes > 0)) return 0
  return Math.max(1, crew > 1 ? Math.ceil(minutes / CREW_RATE - 1e-9) : Math.round(minutes))
}
