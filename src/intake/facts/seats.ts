import { body } from '../questions/body'
import type { Reader } from '../reader'

/** Seats usually fitted, by body (common practice, no source). */
const byBody: Readonly<Record<string, number>> = {
  'city-car': 4,
  hatchback: 5,
  saloon: 5,
  estate: 5,
  coupe: 4,
  convertible: 4,
  'sports-car': 2,
  suv: 5,
  mpv: 7,
  pickup: 5,
  van: 3,
}

/** How many seats the cabin has. */
export const seats = (r: Reader): number => byBody[r.value(body) ?? 'saloon'] ?? 5
