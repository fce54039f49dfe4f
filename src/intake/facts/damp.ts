import { dangers } from '../questions/dangers'
import { dryCheck } from '../questions/dry-check'
import { growth } from '../questions/growth'
import { wetDepth } from '../questions/wet-depth'
import { wetSource } from '../questions/wet-source'
import { wetWhere } from '../questions/wet-where'
import type { Reader } from '../reader'
import { has } from './has'

export const DAMP_CLASSES = ['dry', 'surface', 'soaked', 'standing'] as const
export type DampClass = (typeof DAMP_CLASSES)[number]

/** True when the owner says that it is wet inside. */
export const isWet = (r: Reader): boolean => has(r, dangers, 'wet')

/** How wet the cabin is; soaked where it is wet and the depth is not known. */
export const dampClass = (r: Reader): DampClass => {
  if (!isWet(r)) return 'dry'
  const known = r.as(
    wetDepth,
    (d): DampClass => (d === 'surface' || d === 'standing' ? d : 'soaked'),
  )
  return known ?? 'soaked'
}

/** True when water still comes in, nobody knows why it is wet, or a repair did not hold. */
export const leakOpen = (r: Reader): boolean => {
  if (!isWet(r)) return false
  const open = r.as(wetSource, (s) => (s === 'repaired' ? s : s === 'open' || s === 'unknown'))
  return open === 'repaired' ? (r.as(dryCheck, (held) => !held) ?? false) : (open ?? true)
}

/** True when the water was dirty: flood or sewage. */
export const dirtyWater = (r: Reader): boolean => {
  if (!isWet(r)) return false
  return r.as(wetSource, (s) => s === 'flood' || s === 'sewage') ?? false
}

/** Wet floors, counted; one when it is wet and the place is not known. */
export const wetPlaces = (r: Reader): readonly string[] => {
  if (!isWet(r)) return []
  const where = r.value(wetWhere)
  return where === undefined || where.length === 0 ? ['front-floor'] : where
}

/** True when padding has to come up: soaked, standing, dirty, or growth under the carpet. */
export const liftsCarpet = (r: Reader): boolean =>
  dampClass(r) === 'soaked' ||
  dampClass(r) === 'standing' ||
  dirtyWater(r) ||
  has(r, growth, 'mould-under-carpet')
