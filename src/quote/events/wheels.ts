import { age } from '../../intake/facts/age'
import { has } from '../../intake/facts/has'
import { wants } from '../../intake/facts/wants'
import { dangers } from '../../intake/questions/dangers'
import { jacking } from '../../intake/questions/jacking'
import { lockingKey } from '../../intake/questions/locking-key'
import type { EventRule } from '../rules'
import { event, ofRate, three } from './event'

export const wheelEvents: readonly EventRule[] = [
  event('seized-fastener', (r, c) => {
    if (!wants(r, 'wheels-off')) return null
    const years = age(r, c.nowYear) ?? 10
    const chance = years >= 20 ? 0.15 : years >= 8 ? 0.08 : 0.03
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
    if (!wants(r, 'wheels-off', 'underside') || r.value(jacking) === 'rusty') return null
    const years = age(r, c.nowYear) ?? 10
    return years < 12 ? null : { chance: 0.06, minutes: three(8, 15, 40) }
  }),
  event('flat-battery', (r, c) => {
    if (has(r, dangers, 'not-driving')) return null
    // A car that stands open for days, or an old one, empties its battery.
    const long = has(r, dangers, 'wet', 'growth')
    const old = (age(r, c.nowYear) ?? 10) >= 6
    return long || old ? { chance: long ? 0.15 : 0.04, minutes: three(8, 12, 35) } : null
  }),
]
