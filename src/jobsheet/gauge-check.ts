import { e376Band, type Gauge } from '../quote/paint'

/** The gauge tried on shims, as the bench wrote it; lengths µm, `at` UTC milliseconds. */
export type GaugeCheck = {
  readonly at: number
  readonly shims: readonly { readonly nominal: number; readonly read: number }[]
}

export type ShimVerdict = {
  readonly nominal: number
  readonly read: number
  /** How far off it read, µm, with its sign. */
  readonly off: number
  /** How far off it may be, µm: ASTM E376-11 Note 2, ±10 % or ±2.5 µm, whichever is greater. */
  readonly most: number
  readonly ok: boolean
}

const tenth = (um: number): number => Math.round(um * 10) / 10

/** Each shim against the band the standard gives; the gauge passes where all do. */
export const shimVerdicts = (check: Pick<GaugeCheck, 'shims'>) => {
  const shims = check.shims.map(({ nominal, read }): ShimVerdict => {
    const most = e376Band(nominal)
    const off = read - nominal
    return { nominal, read, off: tenth(off), most: tenth(most), ok: Math.abs(off) <= most }
  })
  return { shims, ok: shims.every((s) => s.ok) }
}

export type Trust = 'passed' | 'failed' | 'unchecked'

/**
 * What a reading taken at a moment rests on. A gauge that failed before or after it and passed nowhere
 * between is in doubt; without any check before it nothing is known.
 */
export const trustAt = (at: number, checks: readonly GaugeCheck[]): Trust => {
  const inOrder = [...checks].sort((a, b) => a.at - b.at)
  const before = inOrder.findLast((c) => c.at <= at)
  const next = inOrder.find((c) => c.at > at)
  if (before && !shimVerdicts(before).ok) return 'failed'
  if (next && !shimVerdicts(next).ok) return 'failed'
  return before ? 'passed' : 'unchecked'
}

/**
 * The gauge for the paint model: the check that failed while any reading rests on it, else the last one.
 * A failed gauge lets nothing strong rest on its readings.
 */
export const gaugeOf = (
  checks: readonly GaugeCheck[],
  readings: readonly { readonly at: number }[],
): Gauge => {
  const doubted = readings.some((r) => trustAt(r.at, checks) === 'failed')
  const counts = doubted
    ? checks.findLast((c) => !shimVerdicts(c).ok)
    : [...checks].sort((a, b) => a.at - b.at).at(-1)
  return counts ? { verification: counts.shims } : {}
}
