import { describe, expect, it } from 'vitest'
import { answerSets } from '../../tests/corpus/answer-sets'
import { errorsIntakeEn } from '../words/en/errors-intake'
import { questionsEn } from '../words/en/questions'
import { repliesEn } from '../words/en/replies'
import { words } from '../words/render'
import { parseValue } from './parse'
import { question } from './question'
import { reader } from './reader'
import { script } from './script'

const sets = answerSets()
const say = words([questionsEn, repliesEn, errorsIntakeEn], {
  language: 'en',
  locale: 'en-GB',
  currency: 'EUR',
  exponent: 2,
}).say

describe('words of the conversation', () => {
  it('has a prompt, a why and every option for each question, and nothing for questions gone', () => {
    const wanted = script.questions.flatMap((q) => [
      `q.${q.id}.prompt`,
      `q.${q.id}.why`,
      ...(q.options ?? []).map((o) => `q.${q.id}.o.${o}`),
    ])
    const written = Object.keys(questionsEn).filter((k) => k.startsWith('q.'))
    const owners = new Set(wanted)
    const extra = written.filter((k) => !owners.has(k))
    expect(wanted.filter((k) => !(k in questionsEn))).toEqual([])
    // What is left belongs to a question (how to find out) or to one of its options (a hint).
    expect(
      extra.filter((k) =>
        k.endsWith('.hint') ? !owners.has(k.slice(0, -5)) : !owners.has(k.replace(/how$/, 'why')),
      ),
    ).toEqual([])
    for (const key of written) expect(say(key).length).toBeGreaterThan(0)
  })

  it('says every reply the answers of the corpus bring about, and has no reply nothing brings about', () => {
    const emitted = new Set<string>()
    for (const answers of sets) {
      const r = reader(answers)
      for (const q of script.questions) {
        if (!(q.id in answers)) continue
        const phrase = q.reply(r)
        if (!emitted.has(phrase.key)) expect(say(phrase)).not.toMatch(/[{}]|undefined|q\./)
        emitted.add(phrase.key)
      }
    }
    expect(Object.keys(repliesEn).filter((key) => !emitted.has(key))).toEqual([])
  })

  it('never gives two questions the same reply', () => {
    const owners = new Map<string, string>()
    for (const [key, text] of Object.entries(repliesEn)) {
      expect([key, owners.get(text)]).toEqual([key, undefined])
      owners.set(text, key)
    }
  })

  it('keeps to short sentences', () => {
    for (const [key, text] of Object.entries({ ...questionsEn, ...repliesEn, ...errorsIntakeEn }))
      for (const sentence of text.split(/[.?!:](?= |$)/))
        expect([key, sentence.trim().split(/\s+/).length <= 24]).toEqual([key, true])
  })

  it('has words for each fault parsing can name, and no fault nothing can name', () => {
    const q = (
      kind:
        | 'multi'
        | 'number'
        | 'year'
        | 'money'
        | 'date'
        | 'text'
        | 'vin'
        | 'photos'
        | 'contact'
        | 'yesNo',
    ) =>
      question<unknown>({
        id: 'x',
        topic: 'car',
        stage: 'first',
        kind,
        ...(kind === 'multi' && { options: ['a', 'b'], alone: ['a'] }),
        ...(kind === 'number' && { unit: 'km', min: 0, max: 1 }),
      })
    const faulty: readonly (readonly [Parameters<typeof q>[0], unknown])[] = [
      ['text', null],
      ['text', 5],
      ['text', `${'x'.repeat(2001)}\u0000`],
      ['multi', ['z']],
      ['multi', 'a'],
      ['multi', ['b', 'b']],
      ['multi', ['a', 'b']],
      ['yesNo', 'x'],
      ['number', 'x'],
      ['number', 2],
      ['number', { amount: 1, unit: 'x' }],
      ['year', 'x'],
      ['year', 1],
      ['money', -1],
      ['date', 'x'],
      ['date', '2026-02-30'],
      ['vin', 'x'],
      ['vin', 'OOOOOOOOOOOOOOOOO'],
      ['photos', ['/']],
      ['photos', Array.from({ length: 99 }, (_, i) => `p${i}`)],
      ['contact', 5],
      ['contact', { fax: 'x' }],
      ['contact', { name: 'A', email: 'x', phone: 'x' }],
      ['contact', { name: 'A', phone: '1' }],
    ]
    const named = new Set<string>()
    for (const [kind, json] of faulty) {
      const parsed = parseValue(q(kind), json)
      expect([kind, json, parsed.ok]).toEqual([kind, json, false])
      if (parsed.ok) continue
      for (const { code, params } of parsed.error) {
        named.add(`error.${code}`)
        expect(say(`error.${code}`, params ?? {})).not.toMatch(/[{}]|undefined/)
      }
    }
    // A year to come is named by the rim, which knows the date.
    const never = Object.keys(errorsIntakeEn).filter((key) => !named.has(key))
    expect(never).toEqual(['error.ERR_FUTURE'])
  })
})
