import { size } from '../questions/size'
import type { Reader } from '../reader'
import { seats } from './seats'

/** Cabin work against five seats, by seat (own estimate); size in the body adds a little. */
const bySize: Readonly<Record<string, number>> = { small: 0.9, mid: 1, large: 1.15 }

/** Cabin work of this car as a multiple of a mid five-seater's. */
export const cabinFactor = (r: Reader): number =>
  (0.4 + 0.12 * seats(r)) * (bySize[r.value(size) ?? 'mid'] ?? 1)
