import { describe, expect, it } from 'vitest'
import { MOULD_LIMITS, mouldWayOf } from './mould'

/**
 * Cabin limits are our own estimate: the building guideline's 10 ft² (0.929 m², EPA 402-K-01-001,
 * whose sizes are practical and not health-based) is far too large for a cabin.
 */
describe('who may treat mould in a cabin', () => {
  it.each([
    [0, 'none'],
    [0.001, 'in-house'],
    [0.0999, 'in-house'],
    [0.1, 'in-house'],
    [0.1001, 'decision'],
    [0.2999, 'decision'],
    [0.3, 'decision'],
    [0.3001, 'specialist'],
    [0.92903, 'specialist'],
  ] as const)('%d m² on a hard surface: %s', (area, way) => {
    expect(mouldWayOf(area, false, false)).toBe(way)
  })

  it('never stays in-house in foam, headliner or under carpet, nor with someone weak in health', () => {
    expect(mouldWayOf(0.001, true, false)).toBe('specialist')
    expect(mouldWayOf(0.001, false, true)).toBe('specialist')
  })

  it('stays below the building guideline', () => {
    expect(MOULD_LIMITS.decision).toBeLessThan(0.929)
  })
})
