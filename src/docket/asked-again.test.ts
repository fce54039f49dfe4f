import { describe, expect, it } from 'vitest'
import { fold } from './fold'
import type { Line } from './line'
import { turnOf } from './states'

const line = (seq: number, kind: string, body: unknown, by = 'owner'): Line => ({
  docket: 'd1',
  seq,
  id: `l${seq}`,
  v: 1,
  kind,
  body,
  by,
  at: 1_000 * seq,
})
const answered = (seq: number, question: string, by: string, more: object = {}) =>
  line(seq, 'answered', { question, answer: { value: 'saloon' }, ...more }, by)
const opened = line(1, 'opened', { from: 'customer', script: '1', language: 'en' }, 'customer')
const sent = line(3, 'submitted', { reference: 'AB-1', consent: true }, 'customer')

describe('foldAskedAgain', () => {
  it('waits for what was asked again, and is told when the customer answers', () => {
    const lines = [opened, answered(2, 'body', 'customer'), sent]
    const asked = [...lines, line(4, 're-asked', { question: 'body', text: { text: 't1' } })]
    const waits = fold(asked)
    expect(waits.askedAgain).toEqual([{ question: 'body', at: 4_000, text: 't1' }])
    expect(turnOf(waits.state, false, waits.askedAgain.length > 0)).toBe('theirs')
    const came = fold([...asked, answered(5, 'body', 'customer')])
    expect([came.askedAgain, came.answeredAgain, came.state]).toEqual([[], true, 'received'])
    expect(
      fold([...asked, answered(5, 'body', 'customer'), line(6, 'replied', {})]).answeredAgain,
    ).toBe(false)
  })

  it('a picture answers a picture asked again', () => {
    const lines = [opened, sent, line(4, 're-asked', { question: 'photos' })]
    const photo = line(5, 'photo-added', { photo: 'p1', subject: 'other' }, 'customer')
    expect(fold(lines).askedAgain).toHaveLength(1)
    expect(fold([...lines, photo]).askedAgain).toEqual([])
  })

  it('marks what the studio changed after sending, until the customer says it anew', () => {
    const lines = [opened, answered(2, 'body', 'owner'), sent]
    expect(fold(lines).corrected).toEqual({})
    const changed = [...lines, answered(4, 'body', 'owner', { why: { text: 't2' } })]
    expect(fold(changed).corrected).toEqual({ body: { at: 4_000, text: 't2' } })
    expect(fold([...changed, answered(5, 'body', 'customer')]).corrected).toEqual({})
  })

  it('keeps what came from last time apart from what was said today', () => {
    const lines = [
      line(1, 'opened', { from: 'studio', script: '1', language: 'en', like: 'd0' }),
      answered(2, 'body', 'owner', { lastTime: true }),
      answered(4, 'year', 'owner', { lastTime: true }),
    ]
    expect(fold(lines)).toMatchObject({ like: 'd0', lastTime: ['body', 'year'] })
    expect(fold([...lines, answered(5, 'year', 'owner')]).lastTime).toEqual(['body'])
  })
})
