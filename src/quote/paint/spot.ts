import {
  combineUncertainty,
  mean,
  normalQuantile,
  sampleSd,
  studentTQuantile,
  welchSatterthwaite,
} from '../../kernel/statistics'
import { gaugeDefaults } from './constants'
import { gaugeBias, gaugeTypeB } from './gauge'
import type { Gauge } from './types'

/** Mean of one place in µm, its type A part (standard uncertainty, degrees of freedom). */
export type Spot = {
  readonly mean: number
  readonly uA: number
  readonly df: number
  readonly n: number
}

/** A thickness in µm with its standard uncertainty; `uA` is the part that does not cancel in a difference. */
export type Measured = { readonly mean: number; readonly u: number; readonly uA?: number }

/**
 * ASTM B530: a set is discarded and repeated when any two readings differ by more than 5 % of the mean
 * or 2 µm, whichever is greater.
 */
export const discordant = (values: readonly number[]): boolean =>
  values.length > 1 &&
  Math.max(...values) - Math.min(...values) > Math.max(0.05 * mean(values), 2) + 1e-9

/**
 * Repeats at one place to a spot. Type A is s/√n with n − 1 degrees of freedom from three readings on
 * (SSPC-PA 2 asks at least 3), a known repeatability over √n when given, the lone-reading spread below three.
 */
export const spotOf = (values: readonly number[], gauge: Gauge): Spot => {
  const n = values.length
  const fixed = gauge.repeatabilitySd ?? (n < 3 ? gaugeDefaults.loneReadingSd : undefined)
  const sd = fixed ?? sampleSd(values)
  return {
    mean: mean(values) - gaugeBias(gauge),
    uA: sd / Math.sqrt(n),
    df: fixed === undefined ? n - 1 : Number.POSITIVE_INFINITY,
    n,
  }
}

const z95 = normalQuantile(0.95)
/** Ratios for the few whole degrees that a spot of two to ten readings has; the t quantile is slow. */
const wholeWidening = Array.from({ length: 10 }, (_, df) =>
  df === 0 ? 1 : studentTQuantile(0.95, df) / z95,
)

const widening = (df: number): number =>
  Number.isFinite(df) ? (wholeWidening[df] ?? Math.max(1, studentTQuantile(0.95, df) / z95)) : 1

/**
 * Several spots to one thickness. Type A shrinks with spots, the gauge's type B does not (one gauge).
 * Few degrees of freedom widen type A by t/z at 95 % (JCGM 101 gives it a t distribution), type B as it is:
 * widening their sum would let a worse gauge narrow it, as its effective degrees grow.
 */
export const poolSpots = (spots: readonly Spot[], gauge: Gauge): Required<Measured> => {
  const centre = mean(spots.map((s) => s.mean))
  const parts = spots.map((s) => ({ u: s.uA / spots.length, df: s.df }))
  const uA = combineUncertainty(parts.map((p) => p.u)) * widening(welchSatterthwaite(parts))
  return { mean: centre, u: combineUncertainty([uA, gaugeTypeB(gauge, centre)]), uA }
}
