import { ageAs } from '../../intake/facts/age'
import { has } from '../../intake/facts/has'
import { is } from '../../intake/facts/is'
import { wants } from '../../intake/facts/wants'
import { dangers } from '../../intake/questions/dangers'
import { jacking } from '../../intake/questions/jacking'
import { lockingKey } from '../../intake/questions/locking-key'
import type { EventRule } from '../rules'
import { event, ofRate, three } from './event'

export const wheelEvents: readonly EventRule[] = [
  event('seized-fastener', (r, c) => {
    if (!wants(r, 'wheels-off')) return null
    const chance = ageAs(r, c.nowYear, (a) => (a >= 20 ? 0.15 : a >= 8 ? 0.08 : 0.03)) ?? 0.08
    return { chance, minutes: three(12, 30, 90) }
  }),
  event('locking-key-missing', (r, c) => {
    if (!wants(r, 'wheels-off')) return null
    const key = r.value(lockingKey)
    if (key === 'none-needed') return null
    return {
      chance: key === 'missing' ? 0.9 : 0.04,
      minutes: three(20, 45, 110),
      money: ofRate(c, 0.3, 0.8, 2.5),
    }
  }),
  event('rusty-jacking-point', (r, c) => {
    if (!wants(r, 'wheels-off', 'underside') || is(r, jacking, 'rusty')) return null
    const old = ageAs(r, c.nowYear, (years) => years >= 12) ?? false
    return !old ? null : { chance: 0.06, minutes: three(8, 15, 40) }
  }),
  event('flat-battery', (r, c) => {
    if (has(r, dangers, 'not-driving')) return null
    // A car that stands open for days, or an old one, empties its battery.
    const long = has(r, dangers, 'wet', 'growth')
    const old = ageAs(r, c.nowYear, (years) => years >= 6) ?? true
    return long || old ? { chance: long ? 0.15 : 0.04, minutes: three(8, 12, 35) } : null
  }),
]
