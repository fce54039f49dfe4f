import { wetSource } from '../questions/wet-source'
import type { Reader } from '../reader'
import { isWet } from './damp'
import { mouldWay } from './mould'
import { wants } from './wants'

/**
 * True when only the first stage is done in the cabin (inspect, cover, refer): growth past the cabin
 * limits or sewage belong to a specialist.
 */
export const firstStageOnly = (r: Reader): boolean =>
  mouldWay(r) === 'specialist' || (isWet(r) && r.as(wetSource, (s) => s === 'sewage') === true)

/** True when the cabin is worked on past the first stage. */
export const cabinWork = (r: Reader): boolean => wants(r, 'cabin') && !firstStageOnly(r)
