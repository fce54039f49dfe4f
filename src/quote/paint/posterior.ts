import { normalCdf } from '../../kernel/statistics'
import type { PaintSettings } from './constants'
import type { Mixture } from './mixture'
import type { PaintPrior } from './priors'
import type { Measured } from './spot'
import type { Spread } from './types'

/** How a reference area may be painted: undercoat plus a little, or undercoat plus full clear. */
export type ReferenceModel = {
  readonly lightWeight: number
  readonly light: Spread
  readonly cleared: Spread
}

export const referenceModel = (lightWeight: number, s: PaintSettings): ReferenceModel => ({
  lightWeight,
  light: { mean: s.referenceLightMean, sd: s.referenceLightSd },
  cleared: { mean: s.referenceClearMean, sd: s.referenceClearSd },
})

export type TopcoatMixture = readonly (Mixture[number] & {
  readonly system: PaintPrior['system']
})[]

/** The part of the topcoat above the floor of its own system: clear, or the colour coat itself. */
export const aboveFloor = (topcoat: TopcoatMixture, s: PaintSettings): Mixture =>
  topcoat.map((c) => ({
    ...c,
    mean: c.mean - (c.system === 'clear' ? s.floorClear : s.floorColour),
  }))

/** Topcoat C given the readings, and how well the readings sit with the prior (best component's p). */
export type Posterior = {
  readonly topcoat: TopcoatMixture
  /** Tail of χ² with one degree for T alone (twice the normal tail), two with a reference (exponential). */
  readonly p: number
  /** Weight of "the reference is fully cleared"; 0 without a reference. */
  readonly clearedWeight: number
  /** Weight of every system but clear over base. */
  readonly colourWeight: number
}

type Case = {
  readonly logWeight: number
  readonly mean: number
  readonly sd: number
  readonly p: number
  readonly cleared: boolean
  readonly system: PaintPrior['system']
}

const square = (x: number): number => x * x

/** One system: T = U + C + e, conditioned in closed form. */
const onTotal = (prior: PaintPrior, total: Measured): Case => {
  const { undercoat: U, topcoat: C } = prior
  const variance = square(U.sd) + square(C.sd) + square(total.u)
  const d = total.mean - U.mean - C.mean
  const gain = square(C.sd) / variance
  return {
    logWeight: Math.log(prior.weight) - 0.5 * Math.log(variance) - (0.5 * d * d) / variance,
    mean: C.mean + gain * d,
    sd: C.sd * Math.sqrt(1 - gain),
    p: 2 * normalCdf(-Math.abs(d) / Math.sqrt(variance)),
    cleared: false,
    system: prior.system,
  }
}

/** One system and one kind of reference: J = U + X + e as well, X light or full clear. */
const onBoth = (
  prior: PaintPrior,
  total: Measured,
  reference: Measured,
  extra: Spread,
  weight: number,
  cleared: boolean,
): Case => {
  const { undercoat: U, topcoat: C } = prior
  const shared = square(U.sd)
  const a = shared + square(C.sd) + square(total.u)
  const b = shared + square(extra.sd) + square(reference.u)
  const det = a * b - shared * shared
  const dT = total.mean - U.mean - C.mean
  const dJ = reference.mean - U.mean - extra.mean
  const distance = (b * dT * dT - 2 * shared * dT * dJ + a * dJ * dJ) / det
  const c = square(C.sd)
  return {
    logWeight: Math.log(prior.weight * weight) - 0.5 * Math.log(det) - 0.5 * distance,
    mean: C.mean + (c * (b * dT - shared * dJ)) / det,
    sd: Math.sqrt(c - (c * c * b) / det),
    p: Math.exp(-0.5 * distance),
    cleared,
    system: prior.system,
  }
}

/**
 * Topcoat thickness given a panel total T and a reference J (both µm, either may be missing).
 * Exact for the model: a mixture over systems and the two kinds of reference, weighted by likelihood.
 * A reference without a total says nothing about the topcoat and is not used.
 */
export const posteriorTopcoat = (
  priors: readonly PaintPrior[],
  model: ReferenceModel,
  total: Measured | null,
  reference: Measured | null,
): Posterior => {
  const cases: readonly Case[] =
    total === null
      ? priors.map((p) => ({
          logWeight: Math.log(p.weight),
          mean: p.topcoat.mean,
          sd: p.topcoat.sd,
          p: 1,
          cleared: false,
          system: p.system,
        }))
      : reference === null
        ? priors.map((p) => onTotal(p, total))
        : priors.flatMap((p) => [
            onBoth(p, total, reference, model.light, model.lightWeight, false),
            onBoth(p, total, reference, model.cleared, 1 - model.lightWeight, true),
          ])
  const top = Math.max(...cases.map((c) => c.logWeight))
  const raw = cases.map((c) => Math.exp(c.logWeight - top))
  const sum = raw.reduce((s, w) => s + w, 0)
  const weightWhere = (pick: (c: Case) => boolean): number =>
    cases.reduce((s, c, i) => (pick(c) ? s + raw[i]! / sum : s), 0)
  return {
    topcoat: cases
      .map((c, i) => ({ weight: raw[i]! / sum, mean: c.mean, sd: c.sd, system: c.system }))
      .filter((c) => c.weight > 1e-12),
    p: Math.max(...cases.map((c) => c.p)),
    clearedWeight: weightWhere((c) => c.cleared),
    colourWeight: weightWhere((c) => c.system !== 'clear'),
  }
}
