import { cabinMarks } from '../questions/cabin-marks'
import { dangers } from '../questions/dangers'
import type { Reader } from '../reader'
import { has } from './has'

/**
 * True when compressed air may be used inside: dry, no growth or animals, no body fluids, no rubbish
 * that may hide glass (common practice, no source: air spreads what must not be breathed).
 */
export const airAllowed = (r: Reader): boolean =>
  !has(r, dangers, 'wet', 'growth') && !has(r, cabinMarks, 'urine', 'vomit', 'milk', 'rubbish')
