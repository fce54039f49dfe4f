import { ride } from '../questions/ride'
import type { Reader } from '../reader'

/** Getting a car up and its wheels off against normal ride height (own estimate). */
export const accessFactor = (r: Reader): number => (r.as(ride, (at) => at === 'lowered') ? 1.25 : 1)
