import type { PaintSettings } from './constants'

/** µm that may still come off, by the confidence the work asks for. Never negative. */
export type Allowance = {
  /** For a sequence whose 95th percentile stays within the light limit. */
  readonly light: number
  /** For anything stronger. */
  readonly strong: number
  /** Hand finishing, below what a gauge can see. */
  readonly hand: number
  /** By the owner's written decision. */
  readonly decision: number
}

export type AllowanceInput = {
  /** Lower quantile of the topcoat: what a decision looks at. Already the smaller of with and without a reference. */
  readonly qLight: number
  /** Lower quantiles of what lies above the floor, likewise. */
  readonly aboveLight: number
  readonly aboveStrong: number
  readonly removedBefore: number
  readonly removedInJob: number
  readonly guardCap: number
  /** Readings and a reference good enough to cut on. */
  readonly mayCut: boolean
  readonly measured: boolean
  /** `false` when the factory prior was dropped. */
  readonly topcoatKnown: boolean
  /** The prior was dropped for the total itself or a known respray, not merely for the reference. */
  readonly ownersRisk: boolean
  readonly decisionBarred: boolean
}

/**
 * Allowance = min(job cap, lifetime cap − already removed, quantile − floor), less what this job took.
 * Topcoat unknown: one light step, and up to 5 µm by the owner's decision. By decision on known paint: at
 * most 2 µm while the light quantile stays at 30 µm or more. The lifetime cap binds every one of them.
 */
export const allowanceOf = (a: AllowanceInput, s: PaintSettings): Allowance => {
  const life = Math.min(s.lifetimeCap, 12.7) - a.removedBefore
  const held = (um: number): number =>
    Math.max(0, Math.min(um, s.jobCap, life, a.guardCap) - a.removedInJob)
  const light = held(
    a.topcoatKnown && a.measured ? a.aboveLight : Math.min(a.aboveLight, s.lightStepMost),
  )
  const strong = a.topcoatKnown && a.mayCut ? Math.min(light, held(a.aboveStrong)) : 0
  const most = !a.topcoatKnown && a.ownersRisk ? s.unknownDecisionMost : s.decisionMost
  const decision = a.decisionBarred || a.qLight < s.decisionFloor ? 0 : held(most)
  return { light, strong, hand: held(s.handMost), decision }
}

/**
 * Does a sequence of this 95th percentile fit? Light or strong is judged on everything done in the job, so two
 * light sets are not twice light. Hand work may use what lies below the gauge's sight.
 */
export const fits = (
  removal95: number,
  counted: number,
  byHand: boolean,
  allowance: Allowance,
  s: PaintSettings,
): boolean => {
  const um = removal95 + counted <= s.lightStepMost ? allowance.light : allowance.strong
  return removal95 <= (byHand ? Math.max(um, allowance.hand) : um)
}
