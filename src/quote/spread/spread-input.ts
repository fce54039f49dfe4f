/** Optimistic, most likely and pessimistic value, in minutes or in minor money units. */
export type ThreePoint = {
  readonly optimistic: number
  readonly mode: number
  readonly pessimistic: number
}

/**
 * One unsure answer: weights of its options (at most MOST_OPTIONS) sum to 1; carSd is the sd it adds
 * to the car factor (log scale).
 */
export type Unknown = {
  readonly id: string
  readonly weights: readonly number[]
  readonly carSd: number
}

/** Options of an unknown are bits of a set. */
export const MOST_OPTIONS = 12

/**
 * A leaf: which options of which unknowns lead here (as bits by their place; any of them), and what
 * then happens with which chance (0..1).
 * Minutes are person-minutes before the car factor; money is in minor units and not scaled by it.
 */
export type Case = {
  readonly when: readonly (readonly [unknown: number, options: number])[]
  readonly chance: number
  readonly minutes: ThreePoint
  readonly money: ThreePoint
}

/** A step or an event; its cases are disjoint and complete over the unknowns they name. */
export type SpreadItem = {
  readonly id: string
  /** Minor units per person-hour. */
  readonly ratePerHour: number
  readonly cases: readonly Case[]
}

export type SpreadInput = {
  readonly items: readonly SpreadItem[]
  readonly unknowns: readonly Unknown[]
  /** Base sd of the log of the car factor. */
  readonly carSd: number
  readonly fixedMoney: number
  readonly minimumMoney: number
  /** Stratified points; a power of two from 256 to 16384, 2048 when left out. */
  readonly points?: number
}

/** Log-variance of the one factor shared by all steps of a car. */
export const carVariance = (input: SpreadInput): number => {
  let sum = input.carSd * input.carSd
  for (const u of input.unknowns) sum += u.carSd * u.carSd
  return sum
}
