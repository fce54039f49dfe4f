import { dangers } from '../questions/dangers'
import { freshPaintWeeks } from '../questions/fresh-paint-weeks'
import { resprayPanels } from '../questions/respray-panels'
import type { Reader } from '../reader'
import { has } from './has'
import { resprayed } from './respray'

/** Weeks a respray is kept from wax, coating and film (up to 90 days; a trade page, by data sheet). */
export const FRESH_WEEKS = 13

/** True while some paint is too new to be sealed, or its age is not known. */
export const freshPaint = (r: Reader): boolean => {
  if (!has(r, dangers, 'fresh-paint')) return false
  return r.as(freshPaintWeeks, (weeks) => weeks < FRESH_WEEKS) ?? true
}

/** True when paint is too new to touch and nobody knows on which panels. */
export const freshSomewhere = (r: Reader): boolean =>
  freshPaint(r) && (r.as(resprayPanels, (panels) => panels.length === 0) ?? true)

/** Panels whose paint is new, as ids of the respray question; empty when none is or none is known. */
export const freshPanels = (r: Reader): readonly string[] => (freshPaint(r) ? resprayed(r) : [])
