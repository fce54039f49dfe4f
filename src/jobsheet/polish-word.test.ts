import { describe, expect, it } from 'vitest'
import { sampleEstimate } from '../pages/sample-estimate'
import { type Asked, NO_WORD, polishWord } from './polish-word'
import { sheetOf } from './sheet'

const asked = (decision: Asked['decision'], panel = 'bonnet'): Asked => ({
  panels: [{ panel }],
  decision,
})

describe('polishWord', () => {
  it('waits while a question is open, whatever was said before', () => {
    expect(polishWord([])).toEqual(NO_WORD)
    expect(polishWord([asked(null)])).toEqual({ ...NO_WORD, waits: true })
    expect(polishWord([asked({ decision: 'go-on' })])).toEqual(NO_WORD)
    expect(polishWord([asked({ decision: 'go-on' }), asked(null, 'roof')]).waits).toBe(true)
  })

  it('follows a no as it was chosen, until a later yes', () => {
    const no = (instead: 'finish-only' | 'leave' | 'stop') => asked({ decision: 'no', instead })
    expect(polishWord([no('finish-only')])).toEqual({ ...NO_WORD, noPolish: true })
    expect(polishWord([no('leave')])).toEqual({ ...NO_WORD, left: ['bonnet'] })
    expect(polishWord([no('stop')])).toEqual({ ...NO_WORD, stop: true })
    expect(polishWord([no('stop'), asked({ decision: 'go-on' })])).toEqual(NO_WORD)
  })
})

describe('sheetOf with a word on the result', () => {
  const sheet = (word = NO_WORD, done: readonly string[] = []) =>
    sheetOf(
      sampleEstimate,
      [],
      {
        steps: Object.fromEntries(done.map((id) => [id, { state: 'done' as const, minutes: 1 }])),
        checks: {},
      },
      {},
      word,
    )
  const polishing = sampleEstimate.steps.filter((s) => s.id.startsWith('polish-')).map((s) => s.id)
  const held = (s: ReturnType<typeof sheet>, by: string) =>
    s.steps.filter((each) => each.heldBy === by).map((each) => each.id)

  it('holds every polishing step, and no other, until the yes', () => {
    expect(polishing.length).toBeGreaterThan(0)
    expect(held(sheet({ ...NO_WORD, waits: true }), 'smaller-result')).toEqual(polishing)
    expect(held(sheet(), 'smaller-result')).toEqual([])
  })

  it('takes the polishing off where the rest is only finished; what is done stays done', () => {
    const now = sheet({ ...NO_WORD, noPolish: true })
    expect(now.leftOut).toEqual(polishing)
    expect(now.steps.map((s) => s.id)).toEqual(
      sampleEstimate.steps.map((s) => s.id).filter((id) => !polishing.includes(id)),
    )
    expect(now.minutes.planned).toBeLessThan(sheet().minutes.planned)
    expect(sheet({ ...NO_WORD, noPolish: true }, polishing).leftOut).toEqual([])
  })

  it('holds all but the hand-over where the customer wants no more work', () => {
    const first = sampleEstimate.steps[0]?.id ?? ''
    const now = sheet({ ...NO_WORD, stop: true }, [first])
    expect(
      now.steps
        .filter((s) => s.heldBy !== 'stop')
        .every((s) => ['hand-over', first].includes(s.id)),
    ).toBe(true)
    expect(held(now, 'stop').length).toBeGreaterThan(0)
  })
})
