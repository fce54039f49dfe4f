import { wish } from '../questions/wish'
import type { Reader } from '../reader'
import { finishSystem } from './finish-system'
import { freshPaint } from './fresh-paint'
import { wants } from './wants'

export const PROTECTIONS = ['none', 'wax', 'matte', 'coating'] as const
export type Protection = (typeof PROTECTIONS)[number]

/**
 * What goes on last (common practice, no source): nothing on fresh paint; its own product on matte; wax on
 * single stage, lacquer, unknown paint, where the car is kept as it is and where only polishing is
 * wanted; else a coating.
 */
export const protection = (r: Reader): Protection => {
  if (!wants(r, 'paint', 'protect') || freshPaint(r)) return 'none'
  const system = finishSystem(r)
  if (system === 'matte') return 'matte'
  if (!wants(r, 'protect') || (system !== 'clear-coat' && system !== 'refinished')) return 'wax'
  return r.as(wish, (w) => w === 'preserve') ? 'wax' : 'coating'
}
