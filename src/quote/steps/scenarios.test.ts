import { describe, expect, it } from 'vitest'
import { worlds } from '../../intake/worlds'
import { events } from '../events'
import { scenarioCars } from './scenario-cars'
import { answersOf, bench, minutesOf, scopeOf } from './step-bench'

const SET_UP = 30
const DAY = 420

describe('ten cars and a careful detailer (own estimate)', () => {
  it.each(scenarioCars)('$name', ({ car, unsure, hours, must, never }) => {
    const answers = answersOf(car, unsure)
    const scope = scopeOf(answers)
    for (const id of must) expect(scope).toContain(id)
    for (const id of never) expect(scope).not.toContain(id)

    let minutes = minutesOf(answers)
    for (const e of events)
      for (const { weight, result } of worlds(answers, (r) => e.need(r, bench)).worlds)
        if (result) {
          const { optimistic, mode, pessimistic } = result.minutes
          minutes += (weight * result.chance * (optimistic + 4 * mode + pessimistic)) / 6
        }
    const total = (minutes + SET_UP * Math.ceil(minutes / DAY)) / 60
    expect(total).toBeGreaterThanOrEqual(hours[0])
    expect(total).toBeLessThanOrEqual(hours[1])
  })
})
