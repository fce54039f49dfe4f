import { body } from '../questions/body'
import { size } from '../questions/size'
import type { Reader } from '../reader'

/** Outside work against a mid saloon, by body and by size within the body (own estimate). */
const byBody: Readonly<Record<string, number>> = {
  'city-car': 0.75,
  hatchback: 0.9,
  saloon: 1,
  estate: 1.1,
  coupe: 0.95,
  convertible: 0.85,
  'sports-car': 0.85,
  suv: 1.15,
  mpv: 1.25,
  pickup: 1.2,
  van: 1.4,
}
const bySize: Readonly<Record<string, number>> = { small: 0.85, mid: 1, large: 1.2 }

/** Outside work of this car as a multiple of a mid saloon's; 1 where size is not asked. */
export const sizeFactor = (r: Reader): number =>
  (byBody[r.value(body) ?? 'saloon'] ?? 1) * (bySize[r.value(size) ?? 'mid'] ?? 1)
