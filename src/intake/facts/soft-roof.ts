import { dangers } from '../questions/dangers'
import { roofKind } from '../questions/roof-kind'
import type { Reader } from '../reader'
import { has } from './has'
import { wants } from './wants'

export const SOFT_ROOFS = ['cloth', 'vinyl'] as const
export type SoftRoof = (typeof SOFT_ROOFS)[number]

/** The soft roof's material; null for a hard roof. A danger without a known kind counts as cloth. */
export const softRoof = (r: Reader): SoftRoof | null => {
  const kind = r.as(roofKind, (k) => SOFT_ROOFS.find((soft) => soft === k) ?? 'hard')
  if (kind !== undefined) return kind === 'hard' ? null : kind
  return has(r, dangers, 'soft-roof') ? 'cloth' : null
}

/** True when the soft roof is worked on. */
export const roofWork = (r: Reader): boolean => wants(r, 'roof') && softRoof(r) !== null
