import type { PaintSettings } from './constants'
import { type Mixture, mixtureQuantile } from './mixture'
import {
  aboveFloor,
  type Posterior,
  posteriorTopcoat,
  type ReferenceModel,
  referenceModel,
} from './posterior'
import { lightlyClearedWeight, type PaintPrior, priorsFor } from './priors'
import type { Measured } from './spot'
import type { CarFacts } from './types'

/** What a total and a reference say of the topcoat, and the quantiles every limit is held against (µm). */
export type Inferred = {
  readonly posterior: Posterior
  /** Fit of the total alone. */
  readonly pTotal: number
  /** Chance of a colour coat on top, from the total alone. */
  readonly colourWeight: number
  /** Lower quantile of the topcoat at the light confidence. */
  readonly qLight: number
  /** Lower quantiles of what lies above the floor. */
  readonly aboveLight: number
  readonly aboveStrong: number
}

export type Inference = {
  readonly priors: readonly PaintPrior[]
  readonly of: (total: Measured | null, reference: Measured | null) => Inferred
}

const oneFloor = (posterior: Posterior): boolean =>
  posterior.topcoat.every(
    (c) => (c.system === 'clear') === (posterior.topcoat[0]?.system === 'clear'),
  )

/** Quantile above the floor; where every part has one floor it is the topcoat's own, moved. */
const above = (posterior: Posterior, q: number, p: number, s: PaintSettings): number =>
  oneFloor(posterior)
    ? q - (posterior.topcoat[0]?.system === 'clear' ? s.floorClear : s.floorColour)
    : mixtureQuantile(aboveFloor(posterior.topcoat, s), p)

type Quantiles = Pick<Inferred, 'qLight' | 'aboveLight' | 'aboveStrong'>

const quantilesOf = (posterior: Posterior, s: PaintSettings): Quantiles => {
  const at = (p: number): number => mixtureQuantile(posterior.topcoat as Mixture, p)
  const qLight = at(s.lightQuantile)
  return {
    qLight,
    aboveLight: above(posterior, qLight, s.lightQuantile, s),
    aboveStrong: above(posterior, at(s.strongQuantile), s.strongQuantile, s),
  }
}

const smaller = (a: Quantiles, b: Quantiles): Quantiles => ({
  qLight: Math.min(a.qLight, b.qLight),
  aboveLight: Math.min(a.aboveLight, b.aboveLight),
  aboveStrong: Math.min(a.aboveStrong, b.aboveStrong),
})

const infer = (
  priors: readonly PaintPrior[],
  model: ReferenceModel,
  total: Measured | null,
  reference: Measured | null,
  s: PaintSettings,
): Inferred => {
  const alone = posteriorTopcoat(priors, model, total, null)
  const posterior = reference === null ? alone : posteriorTopcoat(priors, model, total, reference)
  const plain = quantilesOf(alone, s)
  // A reference may only lower an allowance, never raise it.
  const lower = posterior === alone ? plain : smaller(plain, quantilesOf(posterior, s))
  return { posterior, pTotal: alone.p, colourWeight: alone.colourWeight, ...lower }
}

/** The inference of one car. Panels nobody has measured share one answer, worked out once. */
export const inferenceFor = (car: CarFacts, s: PaintSettings): Inference => {
  const priors = priorsFor(car.finish, car.year)
  const model = referenceModel(lightlyClearedWeight(car.year), s)
  const unmeasured = infer(priors, model, null, null, s)
  return {
    priors,
    of: (total, reference) =>
      total === null ? unmeasured : infer(priors, model, total, reference, s),
  }
}
