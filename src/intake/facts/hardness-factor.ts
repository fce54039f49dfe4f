import { hardSoft } from '../questions/hard-soft'
import type { Reader } from '../reader'

/** Machine time of a cut against normal paint (own estimate): hard paint needs more sets, soft paint more care. */
export const hardnessFactor = (r: Reader): number => {
  const known = r.as(hardSoft, (h) => (h === 'very-hard' ? 1.25 : h === 'marks-easily' ? 1.05 : 1))
  return known ?? 1
}

/** One light set is as many strokes on hard paint; it wants more cooling and pads, and takes less off (own estimate). */
export const oneSetFactor = (r: Reader): number => {
  const known = r.as(hardSoft, (h) => (h === 'very-hard' ? 1.1 : h === 'marks-easily' ? 1.05 : 1))
  return known ?? 1
}
