import { hardSoft } from '../questions/hard-soft'
import type { Reader } from '../reader'

/** Machine time against normal paint (own estimate): hard paint needs more sets, soft paint more care. */
export const hardnessFactor = (r: Reader): number => {
  const h = r.value(hardSoft)
  if (h === 'very-hard') return 1.25
  return h === 'marks-easily' ? 1.05 : 1
}
