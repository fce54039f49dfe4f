import { cabinState } from '../questions/cabin-state'
import type { Reader } from '../reader'
import { wants } from './wants'

export const CABIN_CLASSES = ['tidy', 'family', 'neglected'] as const
export type CabinClass = (typeof CABIN_CLASSES)[number]

/** The cabin's state; undefined when no cabin work is wanted, family when it is not known. */
export const cabinClass = (r: Reader): CabinClass | undefined => {
  if (!wants(r, 'cabin')) return undefined
  const known = r.as(
    cabinState,
    (s): CabinClass => (s === 'tidy' || s === 'neglected' ? s : 'family'),
  )
  return known ?? 'family'
}
