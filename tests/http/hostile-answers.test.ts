import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { script } from '../../src/intake/script'
import { OLD_CAR } from '../browser/visit'
import { callerOf, type Json } from '../support/caller'
import { openWorld, RUNTIMES, type World } from '../support/world'
import { answerByKind } from './answer-by-kind'

const MARKUP = '<script>alert(1)</script><img src=x onerror=alert(2)>"\'`&amp;'

/** Texts nobody meant to be typed; each is kept as it is or refused in words. */
const TEXTS: readonly (readonly [name: string, text: string, refusedAsText: boolean])[] = [
  ['markup', MARKUP, false],
  ['10 000 characters', '0123456789'.repeat(1000), true],
  ['emoji of several parts', '👩🏽‍🔧🚗🏳️‍🌈 ok', false],
  ['right to left', 'עברית عربي', false],
  ['marks that turn the reading direction', 'a\u202Eb\u2066c', true],
  ['control characters', 'bell\u0007 null\u0000 escape\u001b[31m', true],
  ['half a surrogate pair', 'x\ud800y', true],
  ['a formula', '=HYPERLINK("https://elsewhere.example")', false],
  ['a statement of SQL', `'); DROP TABLE line; --`, false],
  ['a template', '{{7*7}} $ {n|one|#} %s %00', false],
  ['a path', '../../../../etc/passwd', false],
]

/** Values of no type that is asked for. */
const TYPES: readonly unknown[] = [
  {},
  [],
  [[]],
  [null],
  [MARKUP],
  true,
  0,
  -1,
  1e300,
  '1e5',
  '',
  { value: 'x' },
  { __proto__: { admin: true }, amount: 1 },
  { amount: 'x', unit: 'parsec' },
  { amount: 1, unit: '__proto__' },
  { name: { first: 'A' }, email: ['a@example.test'] },
  { name: 'A', email: 'a@example.test', fax: '1' },
]

describe.each(RUNTIMES)('whatever is sent as an answer on %s', (runtime) => {
  let world: World
  let id = ''
  let key = ''
  beforeAll(async () => {
    world = await openWorld({ runtime })
    const call = callerOf(world)
    const { json } = await call('POST', '/api/v1/enquiries', { json: {} })
    ;({ id, key } = json)
    for (let q = json.question; q !== null; ) {
      const wanted = OLD_CAR[q.id]
      const value = q.kind === 'year' || q.kind === 'number' ? Number(wanted) : wanted
      const given = wanted === undefined ? answerByKind(q) : { value }
      const done = await call('PUT', `/api/v1/enquiries/${id}/answers/${q.id}`, {
        key,
        json: given,
      })
      expect([q.id, done.status, done.text.slice(0, 200)]).toEqual([
        q.id,
        200,
        done.text.slice(0, 200),
      ])
      q = done.json.question
    }
  })
  afterAll(() => world.close())

  const stored = async (): Promise<Readonly<Record<string, Json>>> => {
    const call = callerOf(world)
    const { json } = await call('GET', `/api/v1/enquiries/${id}`, { key })
    return Object.fromEntries(json.answers.map((a: Json) => [a.question, a.value ?? a.unsure]))
  }
  const put = (question: string, json: unknown) =>
    callerOf(world)('PUT', `/api/v1/enquiries/${id}/answers/${question}`, { key, json })

  /** Each kind that stands answered, once. */
  const kinds = async (): Promise<readonly (readonly [kind: string, question: string])[]> => {
    const answered = await stored()
    const all = new Map<string, string>()
    for (const q of script.questions) if (q.id in answered) all.set(q.kind, q.id)
    return [...all]
  }

  it('is kept as it is, or refused with where and why, and then nothing that stood is lost', async () => {
    const found = await kinds()
    expect(found.length).toBeGreaterThanOrEqual(8)
    const values = [...TEXTS.map(([, text]) => text), ...TYPES]
    for (const [kind, question] of found)
      for (const value of values) {
        const before = await stored()
        const sent = await put(question, { value })
        expect([200, 422], `${kind} ${JSON.stringify(value)}`).toContain(sent.status)
        const after = await stored()
        if (sent.status === 422) {
          expect(after).toEqual(before)
          expect(sent.json.errors.length).toBeGreaterThan(0)
          for (const e of sent.json.errors) {
            expect(e.pointer).toMatch(/^\//)
            expect(e.message.length).toBeGreaterThan(8)
            // What was typed is never said back in an error.
            expect(e.message).not.toContain('<script>')
          }
        } else expect(Object.keys(after).sort()).toEqual(Object.keys(before).sort())
      }
  })

  it.each(TEXTS)('%s as a text', async (_name, text, refused) => {
    const [, question = ''] = (await kinds()).find(([kind]) => kind === 'text') ?? []
    const sent = await put(question, { value: text })
    expect(sent.status).toBe(refused ? 422 : 200)
    if (!refused) expect((await stored())[question]).toBe(text.normalize('NFC'))
  })

  it('a question nobody knows, or that is not asked, or an answer of two minds, changes nothing', async () => {
    const before = await stored()
    const tried: readonly (readonly [string, unknown, number])[] = [
      ['no-such-question', { value: 1 }, 404],
      ['__proto__', { value: 1 }, 404],
      ['constructor', { value: 1 }, 404],
      [encodeURIComponent('../../studio'), { value: 1 }, 404],
      ['mould-area', { value: 'coin' }, 409],
      ['dangers', { value: [], unsure: true }, 422],
      ['dangers', {}, 422],
      ['dangers', { value: ['film', 'film'] }, 422],
      ['dangers', { value: [], more: 1 }, 422],
    ]
    for (const [question, json, status] of tried)
      expect([question, json, (await put(question, json)).status]).toEqual([question, json, status])
    expect(await stored()).toEqual(before)
  })

  it('on the page: what is refused stands in its box again, as text and whole', async () => {
    const opened = await world.fetch('/e', {
      method: 'POST',
      headers: {
        'content-type': 'application/x-www-form-urlencoded',
        'sec-fetch-site': 'same-origin',
      },
      body: '',
    })
    const own = opened.headers.get('location') ?? ''
    const cookie = opened.headers.get('set-cookie')?.split(';')[0] ?? ''
    const post = async (question: string, fields: readonly (readonly [string, string])[]) => {
      const answer = await world.fetch(`${own}/answers/${question}`, {
        method: 'POST',
        headers: {
          'content-type': 'application/x-www-form-urlencoded',
          'sec-fetch-site': 'same-origin',
          cookie,
        },
        body: new URLSearchParams(fields.map(([k, v]) => [k, v])),
      })
      return { status: answer.status, html: await answer.text() }
    }
    await post('dangers', [])
    await post('body', [['value', 'saloon']])
    await post('size', [['value', 'mid']])
    for (const typed of [MARKUP, '1'.repeat(10_000), '١٩٧٤', 'a\u202Eb', '😀', '1e5']) {
      const { status, html } = await post('year', [['value', typed]])
      expect([typed.slice(0, 20), status]).toEqual([typed.slice(0, 20), 422])
      expect(html).not.toContain('<img src=x')
      const box = /name="value"[^>]*value="([^"]*)"/.exec(html)?.[1] ?? ''
      const plain = box
        .replaceAll('&quot;', '"')
        .replaceAll('&#39;', "'")
        .replaceAll('&lt;', '<')
        .replaceAll('&gt;', '>')
        .replaceAll('&amp;', '&')
      expect(plain).toBe(typed)
      expect(html).toContain('id="faults"')
    }
    for (const [question, fields, status] of [
      ['body', [['value', MARKUP]], 422],
      ['dangers', [['value[]', MARKUP]], 422],
      ['no-such-question', [['value', 'x']], 404],
      ['contact', [['name', MARKUP]], 422],
    ] as const) {
      const { status: found, html } = await post(question, fields)
      expect([question, found]).toEqual([question, status])
      expect(html).not.toContain('<img src=x')
    }
  })
})
