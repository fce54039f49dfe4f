import { wish } from '../questions/wish'
import type { Reader } from '../reader'
import { finishSystem } from './finish-system'
import { wants } from './wants'

/** How deep the owner's wish goes, before any reading; the same words as the measured levels. */
export type PolishWish = 'none' | 'glaze' | 'finishing' | 'light' | 'two-step'

/**
 * What would be polished if every panel allowed it: nothing on matte, a glaze by hand on lacquer and
 * metallic single stage, else by wish (common practice, no source).
 */
export const polishWish = (r: Reader): PolishWish => {
  if (!wants(r, 'paint')) return 'none'
  const system = finishSystem(r)
  if (system === 'matte') return 'none'
  if (system === 'lacquer' || system === 'single-stage-metallic') return 'glaze'
  const w = r.value(wish)
  if (w === 'preserve') return 'finishing'
  return w === 'show' ? 'two-step' : 'light'
}
