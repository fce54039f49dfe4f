import { colour } from '../questions/colour'
import { hardSoft } from '../questions/hard-soft'
import type { Reader } from '../reader'

/** True when the finest haze shows in the sun: black paint, or paint that marks easily. */
export const showsHaze = (r: Reader): boolean =>
  r.value(colour) === 'black' || r.as(hardSoft, (h) => h === 'marks-easily') === true
