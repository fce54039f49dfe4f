import { ageAs } from '../../intake/facts/age'
import { cabinWork } from '../../intake/facts/cabin-scope'
import { dampClass, dirtyWater, liftsCarpet } from '../../intake/facts/damp'
import { has } from '../../intake/facts/has'
import { colourMayMove, leatherSeats } from '../../intake/facts/leather'
import { hasRodents } from '../../intake/facts/mould'
import { body } from '../../intake/questions/body'
import { cabinMarks } from '../../intake/questions/cabin-marks'
import { growth } from '../../intake/questions/growth'
import { trim } from '../../intake/questions/trim'
import { wetElectrics } from '../../intake/questions/wet-electrics'
import type { EventRule } from '../rules'
import { budgetIsTight } from '../steps/budget-hours'
import { event, ofRate, three } from './event'

export const cabinEvents: readonly EventRule[] = [
  event('hidden-mould', (r) =>
    cabinWork(r) && liftsCarpet(r) && !has(r, growth, 'mould-under-carpet')
      ? { chance: 0.2, minutes: three(45, 90, 240) }
      : null,
  ),
  event('foam-replaced', (r, c) => {
    if (!cabinWork(r) || !liftsCarpet(r)) return null
    const chance = dirtyWater(r) ? 0.6 : dampClass(r) === 'standing' ? 0.3 : 0.12
    return { chance, minutes: three(25, 50, 120), money: ofRate(c, 0.5, 1.5, 5) }
  }),
  event('wet-electrics', (r) => {
    const d = cabinWork(r) ? dampClass(r) : 'dry'
    if (d === 'dry') return null
    const known = r.value(wetElectrics) === true
    const chance = known ? 0.6 : d === 'surface' ? 0.04 : 0.12
    return { chance, minutes: three(15, 35, 100) }
  }),
  event('hidden-damp', (r, c) => {
    if (!cabinWork(r) || dampClass(r) !== 'dry') return null
    const opens = r.value(body) === 'convertible'
    const old = ageAs(r, c.nowYear, (years) => years >= 12) ?? false
    if (!opens && !old) return null
    return { chance: opens ? 0.12 : 0.05, minutes: three(25, 60, 150) }
  }),
  event('broken-clip', (r, c) => {
    if (!cabinWork(r)) return null
    const lifted = liftsCarpet(r)
    const brittle = has(r, trim, 'brittle-clips')
    if (!lifted && !brittle) return null
    return {
      chance: lifted && brittle ? 0.5 : lifted ? 0.25 : 0.12,
      minutes: three(8, 15, 40),
      money: ofRate(c, 0.05, 0.2, 0.8),
    }
  }),
  event('leather-colour', (r) =>
    cabinWork(r) && leatherSeats(r)
      ? { chance: colourMayMove(r) ? 0.2 : 0.04, minutes: three(15, 30, 80) }
      : null,
  ),
  event('smell-returns', (r, c) => {
    if (!cabinWork(r) || !has(r, cabinMarks, 'smoke', 'milk', 'urine', 'vomit')) return null
    if (budgetIsTight(r, c)) return null
    return { chance: has(r, cabinMarks, 'smoke') ? 0.3 : 0.2, minutes: three(25, 50, 110) }
  }),
  event('chewed-wiring', (r) =>
    hasRodents(r) ? { chance: 0.25, minutes: three(15, 30, 70) } : null,
  ),
]
