import { clothTest } from '../questions/cloth-test'
import { dangers } from '../questions/dangers'
import { finish } from '../questions/finish'
import { paintHistory } from '../questions/paint-history'
import { systemCheck } from '../questions/system-check'
import { year } from '../questions/year'
import type { Reader } from '../reader'
import { era, eraOf } from './era'
import { has } from './has'

export const FINISH_SYSTEMS = [
  'clear-coat',
  'single-stage-solid',
  'single-stage-metallic',
  'lacquer',
  'matte',
  'refinished',
  'unknown',
] as const
export type FinishSystem = (typeof FINISH_SYSTEMS)[number]

/**
 * What the paint most likely is, from what an owner can see: colour on the cloth, year, respray.
 * Common practice, no source; the test spot on the bench decides.
 */
export const finishSystem = (r: Reader): FinishSystem => {
  if (has(r, dangers, 'matte')) return 'matte'
  const sprayed = r.as(paintHistory, (painted) => painted === 'all') ?? false
  const clean = r.as(clothTest, (cloth) => cloth === 'clean')
  const colour = clean === false
  if (!sprayed && !clean && r.as(year, (built) => eraOf(built) === 'lacquer')) return 'lacquer'
  if (colour && r.value(systemCheck) !== 'maybe-metal-dust')
    return r.as(finish, (f) => f === 'metallic') ? 'single-stage-metallic' : 'single-stage-solid'
  if (sprayed) return 'refinished'
  const when = era(r)
  if (clean === undefined && (when === 'enamel' || when === 'lacquer')) return 'unknown'
  return when === 'lacquer' ? 'refinished' : 'clear-coat'
}
