import { describe, expect, it } from 'vitest'
import type { Line } from './line'
import { turnOf } from './states'
import { foldToldAfter } from './told-after'

const line = (kind: string, body: unknown, seq: number): Line =>
  ({ docket: 'd', seq, id: `l${seq}`, v: 1, kind, body, by: 'customer', at: seq }) as Line

const wrong = line('told-after', { day: 3, well: false, text: { text: 't' } }, 2)

describe('foldToldAfter', () => {
  it('keeps every word, and a wrong one waits for the studio', () => {
    const told = foldToldAfter([line('told-after', { day: 3, well: true }, 1), wrong])
    expect(told.toldAfter.map((t) => [t.day, t.well])).toEqual([
      [3, true],
      [3, false],
    ])
    expect(told.complained).toBe(true)
    expect(turnOf('handed-over', told.complained)).toBe('ours')
  })

  it.each(['replied', 'moved', 'dated', 'handed-over'])('has been acted on after %s', (kind) => {
    const told = foldToldAfter([wrong, line(kind, {}, 3)])
    expect(told.complained).toBe(false)
    expect(turnOf('handed-over', told.complained)).toBe('closed')
  })
})
