import { services } from '../questions/services'
import type { Reader } from '../reader'
import { has } from './has'

/** True when the owner asked for one of these services. */
export const wants = (r: Reader, ...names: readonly string[]): boolean => has(r, services, ...names)

/** True when the outside of the car is worked on, so that it has to be washed. */
export const wantsOutside = (r: Reader): boolean =>
  wants(r, 'paint', 'protect', 'wheels-off', 'underside', 'headlights', 'roof', 'stickers')

/** True when the body gets wet and clean: with any work outside, and before glass is cleaned. */
export const isWashed = (r: Reader): boolean => wantsOutside(r) || wants(r, 'glass')
