import { keptWashed } from '../questions/kept-washed'
import type { Reader } from '../reader'

/** Decontamination against a car that is washed now and then (own estimate). */
export const neglectFactor = (r: Reader): number =>
  r.as(keptWashed, (k) => k === 'rarely') ? 1.4 : 1
