import { describe, expect, it } from 'vitest'
import { MOST_TEXT, parseText } from './parse-text'

const kept = (text: string): unknown => {
  const parsed = parseText(text)
  return parsed.ok ? parsed.value : parsed.error.map((i) => i.code)
}

describe('parseText', () => {
  it('composes characters (examples of Unicode Annex #15: s with two dots in either order, the ångström sign)', () => {
    expect(kept('s\u0323\u0307')).toBe('\u1e69')
    expect(kept('s\u0307\u0323')).toBe('\u1e69')
    expect(kept('A\u030a')).toBe('\u00c5')
    expect(kept('\u212b')).toBe('\u00c5')
  })

  it('counts code points, not halves of them', () => {
    expect(kept('🚗'.repeat(MOST_TEXT))).toBe('🚗'.repeat(MOST_TEXT))
    expect(kept('🚗'.repeat(MOST_TEXT + 1))).toEqual(['ERR_TEXT_LONG'])
  })

  it('keeps newlines, right-to-left letters and joined emoji, makes tabs blanks', () => {
    expect(kept('a\r\nb\rc\nd')).toBe('a\nb\nc\nd')
    expect(kept('a\tb')).toBe('a b')
    expect(kept('שלום')).toBe('שלום')
    expect(kept('👩‍🔧')).toBe('👩‍🔧')
    expect(kept('<b onload=x>')).toBe('<b onload=x>')
  })

  it.each(['a\u0000', '\u0007b', 'a\u001bb', 'a\u0085b', 'a\u202eb', 'a\u2066b', 'a\ud800b'])(
    'refuses hidden characters %#',
    (text) => {
      expect(kept(text)).toEqual(['ERR_CONTROL_CHARACTER'])
    },
  )
})
