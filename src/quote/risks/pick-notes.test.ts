import { describe, expect, it } from 'vitest'
import { dangers } from '../../intake/questions/dangers'
import { mouldArea } from '../../intake/questions/mould-area'
import type { RiskRule } from '../rules'
import { MOST_NOTES, pickNotes, raisedNotes } from './pick-notes'
import { car, context, UNSURE } from './plain-answers'
import { has, is } from './read'

const rule = (id: string, more: Partial<RiskRule> = {}): RiskRule => ({
  id,
  severity: 'know',
  weight: 1,
  when: () => ({}),
  source: 'test',
  ...more,
})
const ids = (rules: readonly RiskRule[], changed: Record<string, unknown> = {}) =>
  pickNotes(rules, car(changed), context()).map((n) => n.id)

const mould = { dangers: ['growth'], growth: ['mould-hard'], 'mould-area': UNSURE }
const tray: RiskRule['when'] = (r) => (is(r, mouldArea, 'tray') ? { area: 'tray' } : null)
const coinOrTray: RiskRule['when'] = (r) => {
  const area = r.value(mouldArea)
  return area === 'coin' || area === 'tray' ? { area } : null
}

describe('pickNotes', () => {
  it('orders by severity, then weight, then id', () => {
    const rules = [
      rule('know-heavy', { weight: 99 }),
      rule('stop-b', { severity: 'stop' }),
      rule('decide', { severity: 'decide', weight: 50 }),
      rule('stop-a', { severity: 'stop' }),
      rule('stop-heavy', { severity: 'stop', weight: 2 }),
    ]
    expect(ids(rules)).toEqual(['stop-heavy', 'stop-a', 'stop-b', 'decide', 'know-heavy'])
    expect(ids([...rules].reverse())).toEqual(ids(rules))
  })

  it('gives an id once', () => {
    expect(ids([rule('a'), rule('a', { weight: 9 })])).toEqual(['a'])
  })

  // The size of mould, where not known, is a tray with weight 0.2 (own estimate in the question).
  it.each([
    ['know', undefined, true],
    ['decide', undefined, true],
    ['stop', undefined, true],
    ['know', 0.21, false],
    ['know', 0.2, true],
    ['stop', 0.21, false],
  ] as const)(
    'raises a %s note of weight 0.2 with a limit of %s: %s',
    (severity, least, raised) => {
      const given = least === undefined ? {} : { least }
      expect(ids([rule('a', { severity, when: tray, ...given })], mould)).toEqual(
        raised ? ['a'] : [],
      )
    },
  )

  // Not knowing whether paint is fresh weighs 0.06, matte 0.02, wet 0.13 (own estimate in the question).
  it('raises a stop note earlier than another', () => {
    const wet: RiskRule['when'] = (r) => (has(r, dangers, 'wet') ? {} : null)
    const at = (severity: RiskRule['severity']) =>
      ids([rule('a', { severity, when: wet })], { dangers: UNSURE })
    expect(at('stop')).toEqual(['a'])
    expect(at('decide')).toEqual([])
  })

  it('sums the weights of the worlds and tells of the likeliest', () => {
    const [note] = pickNotes([rule('a', { when: coinOrTray })], car(mould), context())
    expect(note?.chance).toBeCloseTo(0.45, 12)
    expect(note?.params).toEqual({ area: 'coin' })
  })

  it('names the questions that were read, with those that decide whether they are asked', () => {
    const [note] = pickNotes([rule('a', { when: coinOrTray })], car(mould), context())
    expect(note?.because).toEqual(['dangers', 'growth', 'mould-area'])
  })

  it('takes off what another note covers', () => {
    const rules = [rule('no-lifting', { severity: 'stop' }), rule('wheels-off'), rule('other')]
    expect(ids(rules)).toEqual(['no-lifting', 'other'])
    expect(ids(rules.slice(1))).toEqual(['other', 'wheels-off'])
  })

  it('keeps twelve, and every stop and decide note beyond', () => {
    const know = Array.from({ length: 20 }, (_, i) => rule(`k${i}`, { weight: 20 - i }))
    expect(ids(know)).toEqual(know.slice(0, MOST_NOTES).map((r) => r.id))
    const decide = Array.from({ length: 13 }, (_, i) => rule(`d${i}`, { severity: 'decide' }))
    expect(ids([...know, ...decide])).toEqual(decide.map((r) => r.id).sort())
    expect(raisedNotes([...know, ...decide], car(), context())).toHaveLength(33)
  })
})
