import { cabinState } from './questions/cabin-state'
import { type Dangers, dangers } from './questions/dangers'
import { growth } from './questions/growth'
import { paintHistory } from './questions/paint-history'
import { type Services, services } from './questions/services'
import { year } from './questions/year'
import type { Reader } from './reader'

/** The owner named this danger. */
export const danger = (r: Reader, d: Dangers): boolean =>
  r.as(dangers, (named) => named.includes(d)) === true

/** The owner wants this work. */
export const service = (r: Reader, s: Services): boolean =>
  r.as(services, (named) => named.includes(s)) === true

/** Painted surfaces are polished or protected. */
export const wantsPaint = (r: Reader): boolean => service(r, 'paint') || service(r, 'protect')

export const matte = (r: Reader): boolean => danger(r, 'matte')

/** Built before `before`, or nobody knows when; in a world of an unknown year, the year of that world. */
export const olderThan = (r: Reader, before: number): boolean =>
  r.as(year, (built) => built < before) ?? true

export const hasMould = (r: Reader): boolean =>
  r.as(growth, (seen) => seen.some((g) => g.startsWith('mould'))) === true

/** So much is wrong that a look-over comes first; small things are then seen, not asked. */
export const crowded = (r: Reader, from = 4): boolean =>
  r.as(dangers, (named) => named.length >= from) ?? false

/** Something in the car's past (or not known of it) makes a finer question worth the owner's time. */
export const history = (r: Reader): boolean => {
  const sprayed = r.as(paintHistory, (painted) => painted === 'part' || painted === 'all')
  const used = r.as(cabinState, (cabin) => cabin === 'family' || cabin === 'neglected')
  return (
    (r.as(dangers, (named) => named.length > 0) ?? true) ||
    olderThan(r, 2005) ||
    sprayed === true ||
    r.unsettled(paintHistory) ||
    used === true ||
    r.unsettled(cabinState)
  )
}

/** Room for one more: a history, or a short conversation because no paint work is wanted. */
export const spare = (r: Reader): boolean => history(r) || !wantsPaint(r)
