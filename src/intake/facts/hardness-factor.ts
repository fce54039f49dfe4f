import { hardSoft } from '../questions/hard-soft'
import type { Reader } from '../reader'

/** Machine time against normal paint (own estimate): hard paint needs more sets, soft paint more care. */
export const hardnessFactor = (r: Reader): number => {
  const known = r.as(hardSoft, (h) => (h === 'very-hard' ? 1.25 : h === 'marks-easily' ? 1.05 : 1))
  return known ?? 1
}
