import { describe, expect, it } from 'vitest'
import type { Line } from './line'
import { foldToTell } from './to-tell'

let n = 0
const line = (kind: string, body: unknown, by = 'owner'): Line => {
  n += 1
  return { docket: 'd', seq: n, id: `l${n}`, v: 1, kind, body, by, at: n }
}
const whats = (lines: readonly Line[]) => foldToTell(lines).toTell.map((t) => t.what)

describe('foldToTell', () => {
  const sent = line('sent', { revision: 1 })
  const asked = line('re-asked', { question: 'photos' })
  const dated = line('dated', { start: '2026-06-01' })
  const extra = line('extra-asked', { extra: 'e1', within: false })

  it('holds what the customer should hear of until somebody says it was told', () => {
    const all = [sent, asked, dated, extra]
    expect(whats(all)).toEqual(['quote', 'question', 'day', 'extra'])
    const told = line('told', { lines: [sent.id, extra.id], how: 'phone' })
    expect(whats([...all, told])).toEqual(['question', 'day'])
  })

  it('drops what the customer has answered by itself', () => {
    const yes = line('decided', { decision: 'accept', revision: 1 }, 'customer')
    const photo = line('photo-added', { photo: 'p', subject: 'photos' }, 'customer')
    const agreed = line('extra-decided', { extra: 'e1', decision: 'agree' }, 'customer')
    expect(whats([sent, asked, extra, yes, photo, agreed])).toEqual([])
    // An answer the studio typed in itself tells the customer nothing.
    const ours = line('answered', { question: 'year', answer: { value: 2019 } }, 'owner')
    expect(whats([line('re-asked', { question: 'year' }), ours])).toEqual(['question'])
  })

  it('holds one day and one quote: the newest', () => {
    const again = line('dated', { start: '2026-06-03' })
    const more = line('sent', { revision: 2 })
    expect(foldToTell([sent, dated, more, again]).toTell.map((t) => t.line)).toEqual([
      more.id,
      again.id,
    ])
  })

  it('has nothing to tell of extra work inside the agreed limit, or once it is over', () => {
    expect(whats([line('extra-asked', { extra: 'e2', within: true })])).toEqual([])
    expect(whats([sent, line('moved', { to: 'withdrawn' }, 'customer')])).toEqual([])
    expect(whats([dated, line('handed-over', {})])).toEqual([])
  })

  it('tells of a look-over and of turning down, and of one instead of the other', () => {
    const look = line('moved', { to: 'look-over' })
    const down = line('moved', { to: 'turned-down' })
    expect(whats([look])).toEqual(['look-over'])
    expect(whats([look, down])).toEqual(['turned-down'])
  })
})
