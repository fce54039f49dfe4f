import { dangers } from '../questions/dangers'
import { growth } from '../questions/growth'
import { mouldArea } from '../questions/mould-area'
import { sensitivePeople } from '../questions/sensitive-people'
import { wetSource } from '../questions/wet-source'
import type { Reader } from '../reader'
import { has } from './has'

/** Cabin limits for growth in m²: up to the first in-house, up to the second by the owner's decision (own estimate). */
export const MOULD_LIMITS = { inHouse: 0.1, decision: 0.3 } as const

export const MOULD_WAYS = ['none', 'in-house', 'decision', 'specialist'] as const
export type MouldWay = (typeof MOULD_WAYS)[number]

/** Who may treat growth of this area (m²) in a cabin; `hidden` is foam, headliner, vents or under carpet. */
export const mouldWayOf = (area: number, hidden: boolean, sensitive: boolean): MouldWay => {
  if (area <= 0) return 'none'
  if (hidden || sensitive || area > MOULD_LIMITS.decision) return 'specialist'
  return area <= MOULD_LIMITS.inHouse ? 'in-house' : 'decision'
}

/** Area in m² each answer stands for; a hand is at the in-house limit, a tray at the decision limit (own estimate). */
const areas: Readonly<Record<string, number>> = { coin: 0.002, hand: 0.1, tray: 0.3, larger: 0.6 }

/** Growth area in m²; a tray when there is some and its size is not known; 0 when there is none. */
export const mouldSquare = (r: Reader): number =>
  hasMould(r) ? (areas[r.value(mouldArea) ?? 'tray'] ?? 0.3) : 0

/** True when mould is in the cabin; growth of a kind not known counts as mould. */
export const hasMould = (r: Reader): boolean => {
  if (!has(r, dangers, 'growth')) return false
  return r.as(growth, (kinds) => kinds.some((k) => k.startsWith('mould'))) ?? true
}

/** True when rodents have been in the car. */
export const hasRodents = (r: Reader): boolean =>
  has(r, dangers, 'growth') && has(r, growth, 'nest', 'droppings')

/** Who may treat the growth in this car. */
export const mouldWay = (r: Reader): MouldWay => {
  const area = mouldSquare(r)
  if (area === 0) return 'none'
  const hidden =
    has(r, growth, 'mould-headliner', 'mould-under-carpet') ||
    r.as(wetSource, (s) => s === 'sewage') === true
  return mouldWayOf(area, hidden, r.value(sensitivePeople) === true)
}
