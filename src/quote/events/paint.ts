import { ageAs } from '../../intake/facts/age'
import { finishSystem } from '../../intake/facts/finish-system'
import { has } from '../../intake/facts/has'
import { is } from '../../intake/facts/is'
import { protection } from '../../intake/facts/protection'
import { sizeFactor } from '../../intake/facts/size-factor'
import { wants } from '../../intake/facts/wants'
import { defects } from '../../intake/questions/defects'
import { polishedBefore } from '../../intake/questions/polished-before'
import type { EventRule } from '../rules'
import { polishes } from '../steps/polish-scope'
import { event, ofRate, three } from './event'

export const paintEvents: readonly EventRule[] = [
  event('extra-pass', (r, c) => {
    if (!polishes(r, c)) return null
    const deep = has(r, defects, 'scratches', 'nail-scratch', 'etching')
    return { chance: deep ? 0.22 : 0.12, minutes: three(25, 50, 120, sizeFactor(r)) }
  }),
  event('marks-return', (r, c) =>
    polishes(r, c) && is(r, polishedBefore, 'often-or-dealer')
      ? { chance: 0.25, minutes: three(25, 50, 120) }
      : null,
  ),
  event('test-spot-again', (r, c) => {
    if (!polishes(r, c)) return null
    const system = finishSystem(r)
    const sure = system === 'clear-coat'
    return { chance: sure ? 0.04 : 0.18, minutes: three(12, 22, 50) }
  }),
  event('overspray-found', (r) =>
    wants(r, 'paint', 'protect') && !has(r, defects, 'overspray')
      ? { chance: 0.04, minutes: three(25, 50, 150, sizeFactor(r)) }
      : null,
  ),
  event('badge-pin', (r, c) => {
    if (!polishes(r, c)) return null
    const chance = ageAs(r, c.nowYear, (years) => (years >= 25 ? 0.15 : years >= 15 ? 0.06 : 0))
    return chance ? { chance, minutes: three(10, 20, 50), money: ofRate(c, 0.1, 0.3, 1.2) } : null
  }),
  event('high-spots', (r) =>
    protection(r) === 'coating' ? { chance: 0.08, minutes: three(15, 30, 80) } : null,
  ),
]
