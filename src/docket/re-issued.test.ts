import { describe, expect, it } from 'vitest'
import type { Line } from './line'
import { foldReIssued } from './re-issued'

const line = (seq: number, kind: string, body: unknown): Line => ({
  docket: 'd1',
  seq,
  id: `l${seq}`,
  v: 1,
  kind,
  body,
  by: 'owner',
  at: 1_000 * seq,
})
const asked = (seq: number, issue: string) =>
  line(seq, 're-issued', { issue, revision: 1, panels: [], promised: null, now: null })
const word = (seq: number, issue: string, decision: 'go-on' | 'no') =>
  line(seq, 're-issue-decided', { issue, decision, name: { text: 't' }, how: 'phone' })

describe('foldReIssued', () => {
  it('keeps the first word on each, and it stays', () => {
    const { reIssues } = foldReIssued([
      asked(1, 'i1'),
      word(2, 'i1', 'go-on'),
      word(3, 'i1', 'no'),
      asked(4, 'i2'),
    ])
    expect(reIssues.map((r) => [r.issue, r.decision?.decision ?? null])).toEqual([
      ['i1', 'go-on'],
      ['i2', null],
    ])
  })

  it('a new question takes the place of the open one, and a word on the old one counts nowhere', () => {
    const { reIssues } = foldReIssued([asked(1, 'i1'), asked(2, 'i2'), word(3, 'i1', 'go-on')])
    expect(reIssues.map((r) => [r.issue, r.decision])).toEqual([['i2', null]])
  })
})
