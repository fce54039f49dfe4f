import type { Allowance } from './allowance'
import type { PaintSettings } from './constants'
import type { Evidence } from './evidence'
import { type Why, why } from './types'

export type NoteInput = {
  readonly evidence: Evidence
  readonly allowance: Allowance
  readonly unreadable: boolean
  readonly plastic: boolean
  readonly gaugeInBand: boolean
  readonly removedBefore: number
  readonly removedInJob: number
  readonly decisionHelps: boolean
  readonly anotherSet: boolean
}

/** Reasons that come from missing readings and from the numbers themselves, most basic first. */
const numberNotes = (n: NoteInput, s: PaintSettings): readonly (Why | false)[] => {
  const { read, total, reference, inferred } = n.evidence
  const uneven = total !== null && read.total !== null && total.mean < read.total.mean
  const left = inferred.aboveLight
  return [
    total === null && !n.unreadable && why('paint.why.not-measured'),
    total === null && n.plastic && why('paint.why.unreadable-substrate'),
    total !== null && reference === null && why('paint.why.no-reference'),
    total !== null && read.readings < 3 && why('paint.why.few-readings', { n: read.readings }),
    !n.gaugeInBand && why('paint.why.gauge-out-of-band'),
    uneven && why('paint.why.uneven', { mean: read.total.mean, thinnest: read.thinnest ?? 0 }),
    left < 0 && why('paint.why.below-floor', { quantile: inferred.qLight, under: -left }),
    n.removedBefore >= s.lifetimeCap &&
      why('paint.why.lifetime-used', { removed: n.removedBefore, cap: s.lifetimeCap }),
    n.removedInJob > 0 &&
      n.allowance.light === 0 &&
      why('paint.why.allowance-used', { um: n.removedInJob }),
    n.decisionHelps && why('paint.why.decision-possible', { um: n.allowance.decision }),
    n.anotherSet && why('paint.why.fits', { light: n.allowance.light, strong: n.allowance.strong }),
  ]
}

/** Every reason behind a panel's verdict, each code once: guards, gate, readings, then the numbers. */
export const notesOf = (n: NoteInput, s: PaintSettings): readonly Why[] => {
  const { guarded, gate, read, after, referenceWhys } = n.evidence
  const all = [guarded.whys, gate, read.whys, after.whys, referenceWhys, numberNotes(n, s)].flat()
  const seen = new Set<string>()
  return all.filter((w): w is Why => {
    if (w === false || seen.has(w.code)) return false
    seen.add(w.code)
    return true
  })
}
