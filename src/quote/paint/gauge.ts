import { mean } from '../../kernel/statistics'
import { gaugeDefaults } from './constants'
import type { Gauge, PaintSet, PanelSubstrate, Why } from './types'
import { why } from './types'

/** Half the width of the accuracy band at a thickness, µm: the greater of the percentage and the least. */
export const accuracyBand = (gauge: Gauge, thickness: number): number =>
  Math.max(
    gauge.accuracyMin ?? gaugeDefaults.accuracyMin,
    ((gauge.accuracyPercent ?? gaugeDefaults.accuracyPercent) / 100) * Math.abs(thickness),
  )

/** ASTM E376-11 Note 2: within ±10 % or ±2.5 µm of the true thickness, whichever is greater. */
export const e376Band = (thickness: number): number => Math.max(2.5, 0.1 * thickness)

/** What the gauge reads too high on shims, µm (0 without shims), to be taken off every reading. */
export const gaugeBias = (gauge: Gauge): number => {
  const shims = gauge.verification ?? []
  return shims.length === 0 ? 0 : mean(shims.map((s) => s.read - s.nominal))
}

/**
 * Type B standard uncertainty at a thickness, µm: rectangular a/√3 (GUM 4.3.7, value from memory), a being
 * the stated accuracy or the largest shim error left after the bias, whichever is greater. Good shims
 * move the reading but never promise more than the maker does.
 */
export const gaugeTypeB = (gauge: Gauge, thickness: number): number => {
  const bias = gaugeBias(gauge)
  const left = (gauge.verification ?? []).map((s) => Math.abs(s.read - s.nominal - bias))
  return Math.max(accuracyBand(gauge, thickness), ...left) / Math.sqrt(3)
}

/** False when a shim was read outside the E376 band: nothing strong rests on such a gauge. */
export const gaugeInBand = (gauge: Gauge): boolean =>
  (gauge.verification ?? []).every((s) => Math.abs(s.read - s.nominal) <= e376Band(s.nominal))

/** The way a set was really read: probe mode and metal. Sets are compared only within one mode. */
export const probeMode = (set: PaintSet, substrate: PanelSubstrate): string => {
  if (set.probe === 'ultrasonic') return 'ultrasonic'
  if (substrate === 'unknown') return set.probe ?? 'dual'
  return `${substrate === 'aluminium' ? 'eddy' : 'magnetic'}/${substrate}`
}

/** Why a set cannot count as a paint thickness on this substrate; null when it can. */
export const unreadableWhy = (set: PaintSet, substrate: PanelSubstrate): Why | null => {
  if (set.overFilm) return why('paint.why.over-film')
  if (set.probe === 'ultrasonic') return null
  if (substrate === 'plastic' || substrate === 'composite')
    return why('paint.why.unreadable-substrate')
  const ferrous = substrate === 'steel' || substrate === 'galvanised'
  if (set.probe === 'eddy' && ferrous) return why('paint.why.wrong-probe')
  if (set.probe === 'magnetic' && substrate === 'aluminium') return why('paint.why.wrong-probe')
  return null
}
