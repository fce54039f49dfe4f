import type { Marks } from '../intake/marks'
import type { Reader } from '../intake/reader'
import type { Session } from '../intake/session'
import { type World, type Worlds, worldsIn } from '../intake/worlds'
import type { Context, ThreePoint } from './context'
import type { EventRule, Lag, Need, RefusalRule, StepRule } from './rules'

export type StepNeed = {
  readonly need: Need
  readonly lag: Lag | null
  readonly cautions: readonly string[]
  readonly byTime: { readonly capMinutes: number } | null
}

/** A step rule run in every world of what is not settled. */
export type RunStep = {
  readonly rule: StepRule
  readonly worlds: readonly World<StepNeed | null>[]
  readonly because: readonly string[]
  readonly reads: Marks
  /** How likely the step is needed, over all worlds. */
  readonly chance: number
}

export type RunEvent = {
  readonly id: string
  readonly worlds: readonly World<{
    readonly chance: number
    readonly minutes: ThreePoint
    readonly money?: ThreePoint
  } | null>[]
  readonly because: readonly string[]
  readonly chance: number
  readonly source: string
}

const inWorld = (
  rule: StepRule,
  refusals: readonly RefusalRule[],
  r: Reader,
  c: Context,
): StepNeed | null => {
  const need = rule.need(r, c)
  if (need === null) return null
  if (refusals.some((x) => x.when(r, c) !== null)) return null
  return {
    need,
    lag: rule.lag?.(r, c) ?? null,
    cautions: rule.cautions(r),
    byTime: rule.byTime?.(r, c) ?? null,
  }
}

const chanceOf = <R>(found: Worlds<R | null>, each: (result: R) => number): number =>
  Math.min(
    1,
    found.worlds.reduce((sum, w) => sum + (w.result === null ? 0 : w.weight * each(w.result)), 0),
  )

/** Runs one step in all worlds; what one of its refusals holds for is not needed there. */
export const runStep = (
  rule: StepRule,
  refusals: readonly RefusalRule[],
  s: Session,
  c: Context,
): RunStep => {
  const found = worldsIn(s, (r) => inWorld(rule, refusals, r, c))
  return {
    rule,
    worlds: found.worlds,
    reads: found.reads,
    get because() {
      return found.because
    },
    chance: chanceOf(found, (n) => n.need.chance ?? 1),
  }
}

export const runEvent = (rule: EventRule, s: Session, c: Context): RunEvent => {
  const found = worldsIn(s, (r) => rule.need(r, c))
  return {
    id: rule.id,
    worlds: found.worlds,
    get because() {
      return found.because
    },
    chance: chanceOf(found, (n) => n.chance),
    source: rule.source,
  }
}
