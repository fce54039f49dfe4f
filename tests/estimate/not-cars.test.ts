import { describe, expect, it } from 'vitest'
import { answersOf, plainCar } from '../../src/quote/steps/step-bench'
import { english, estimateOf } from './studio'

describe('boats, motorhomes and motorcycles', () => {
  it.each(['boat', 'motorhome', 'motorcycle'])('%s: a look is priced, the work is not', (body) => {
    const small = estimateOf(answersOf({ ...plainCar, body, size: 'small' }))
    const large = estimateOf(answersOf({ ...plainCar, body, size: 'large', wish: 'show' }))
    for (const e of [small, large]) {
      expect(e.steps.map((s) => s.id)).toEqual([
        'check-in',
        'look-over',
        'test-area',
        'hourly-scope',
        'clean-down',
        'hand-over',
      ])
      // The hours of the work are in no figure: no line, no day, no range.
      expect(e.offer.lines.some((l) => l.step === 'hourly-scope')).toBe(false)
      expect(e.plan.days.flatMap((d) => d.blocks).some((b) => b.step === 'hourly-scope')).toBe(
        false,
      )
      expect(e.labourMinutes.high).toBeLessThan(4 * 60)
      expect(e.couldAdd).toEqual([])
      expect(e.scope.turnedDown.map((t) => t.id)).toContain('fixed-price')
      expect(e.riskNotes.map((n) => n.id)).toContain('by-the-hour')
      expect(english.say(e.expectation.phrase)).toMatch(/agreed after that/)
    }
    // Nothing about the work moves what the look costs.
    expect(small.offer.total).toBe(large.offer.total)
    expect(english.say('refuse.fixed-price')).toMatch(/for a look and a test area alone/)
    expect(english.say('refuse.fixed-price.turn')).toMatch(/hours with a cap/)
  })
})
