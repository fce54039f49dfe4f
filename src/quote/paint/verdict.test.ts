import { describe, expect, it } from 'vitest'
import { allowed, defaultSettings, type SequenceId, sequenceById } from './index'
import { jamb, one, panel, spot } from './sample-readings'

describe('at the bench', () => {
  const may = (p: { permit: Parameters<typeof allowed>[1] }, id: SequenceId, consent = {}) =>
    allowed(sequenceById(id), p.permit, defaultSettings, consent)
  it('a written decision opens a light step on thin paint, never a cut', () => {
    const p = one([spot('a', 95), jamb(70)]).panels[0]!
    expect(may(p, 'light')).toEqual({ allowed: false, needs: 'decision' })
    expect(may(p, 'light', { decision: true })).toEqual({ allowed: true, by: 'decision' })
    expect(may(p, 'light-finish', { decision: true })).toEqual({
      allowed: false,
      needs: 'nothing-helps',
    })
  })
  it('an unknown topcoat asks for a test spot first', () => {
    const p = one([spot('a', 250)]).panels[0]!
    expect(may(p, 'light')).toEqual({ allowed: false, needs: 'test-spot' })
    expect(may(p, 'light', { testSpotPassed: true }).allowed).toBe(true)
    expect(may(p, 'mild-cut', { decision: true, testSpotPassed: true }).allowed).toBe(true)
    expect(may(p, 'two-step', { decision: true, testSpotPassed: true }).allowed).toBe(false)
  })
  it('no decision polishes haze or peel', () => {
    for (const facts of [{ haze: true }, { peel: true }]) {
      const p = one([spot('a', 120), jamb(85)], { panels: [panel('a', facts)] }).panels[0]!
      expect(may(p, 'finish', { decision: true, testSpotPassed: true })).toEqual({
        allowed: false,
        needs: 'nothing-helps',
      })
    }
  })
  it('plastic is judged by decision, a light step at most', () => {
    const p = one([], { panels: [panel('a', { substrate: 'plastic' })] }).panels[0]!
    expect(p.verdict).toBe('cannot-be-read')
    expect(may(p, 'light')).toEqual({ allowed: false, needs: 'decision' })
    expect(may(p, 'light', { decision: true }).allowed).toBe(true)
    expect(may(p, 'light-finish', { decision: true }).allowed).toBe(false)
  })
  it('two light sets are judged as the stronger work they are', () => {
    const readings = [spot('a', 112), jamb(85)]
    const done = [{ panel: 'a', sets: [{ step: 'light', sets: 1 }] }] as const
    expect(may(one(readings).panels[0]!, 'light').allowed).toBe(true)
    expect(may(one(readings, { done }).panels[0]!, 'light')).not.toEqual({
      allowed: true,
      by: 'allowance',
    })
  })
})
