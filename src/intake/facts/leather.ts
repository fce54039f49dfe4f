import { leather } from '../questions/leather'
import type { Reader } from '../reader'
import { has } from './has'

/** True when seats are leather of any kind but suede. */
export const leatherSeats = (r: Reader): boolean =>
  has(r, leather, 'smooth', 'perforated', 'cracked', 'dyed')

/** True when colour may move: dry, cracked, suede or dyed. */
export const colourMayMove = (r: Reader): boolean => has(r, leather, 'cracked', 'suede', 'dyed')
