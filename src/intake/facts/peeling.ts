import { dangers } from '../questions/dangers'
import { peelWhere } from '../questions/peel-where'
import type { Reader } from '../reader'
import { has } from './has'

/** Where the clear coat lifts, as ids of its question; empty when it lifts nowhere. */
export const peeling = (r: Reader): readonly string[] =>
  has(r, dangers, 'peeling') ? (r.value(peelWhere) ?? []) : []

/** True when the paint lifts somewhere, even if the place is not known. */
export const peels = (r: Reader): boolean => has(r, dangers, 'peeling')
