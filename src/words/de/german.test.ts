import { describe, expect, it } from 'vitest'
import { DEFAULT_PROFILE } from '../../quote/studio-profile'
import { studioOf } from '../../routes/http/studio'
import { english } from '../en'
import { words } from '../render'
import { german } from '.'

/** Names of the parameters in a sentence, with their formats. */
const params = (text: string): readonly string[] =>
  [...text.matchAll(/\{([^{}]+)\}/g)].map((m) => (m[1] ?? '').split('|')[0] ?? '').sort()

const formats = { language: 'de', locale: 'de-DE', currency: 'EUR', exponent: 2 }

describe('German, as far as it goes', () => {
  it.each(Object.entries(german))(
    '%s has an English sentence with the same parameters',
    (key, de) => {
      const en = english[key]
      expect(en).toBeDefined()
      expect(params(de)).toEqual(params(en ?? ''))
      expect(de).not.toBe(en)
    },
  )

  it('what is not there is said in English as a whole sentence, never in halves', () => {
    const marked = (all: typeof english, l: string) =>
      Object.fromEntries(Object.entries(all).map(([k, text]) => [k, `${l}${text}${l}`]))
    const both = words([marked(german, '⟦'), marked(english, '⟪')], formats)
    const plain = Object.keys(english).filter((k) => params(english[k] ?? '').length === 0)
    expect(plain.length).toBeGreaterThan(500)
    for (const key of plain)
      expect(both.say(key)).toBe(key in german ? `⟦${german[key]}⟦` : `⟪${english[key]}⟪`)
  })

  it('is spoken where the studio chose it, and nowhere else', () => {
    const of = (language?: 'de') => {
      const body = { ...DEFAULT_PROFILE, ...(language ? { language } : {}) }
      return studioOf({ rev: 1, body, by: 'owner', at: 0 } as never, Date.UTC(2026, 5, 1)).words
    }
    expect(of('de').say('page.go-on')).toBe('Weiter')
    expect(of('de').say('page.expect')).toBe(english['page.expect'])
    expect(of().say('page.go-on')).toBe('Go on')
  })
})
