import { Validator } from '@seriousme/openapi-schema-validator'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { createApp } from '../../src/app'
import { registry } from '../../src/routes/registry'
import { type Caller, callerOf, type Json } from '../support/caller'
import { openWorld, RUNTIMES, type World } from '../support/world'
import { answerByKind } from './answer-by-kind'
import { prepared, preparedWorld } from './stages'

const base = '/api/v1/enquiries'
const pointers = (json: Json): string[] => json.errors.map((e: Json) => e.pointer).sort()

describe('what there is', () => {
  it('is the registry and nothing besides it', () => {
    const mounted = createApp({} as never).routes.map((r) => `${r.method} ${r.path}`)
    expect(mounted.sort()).toEqual(registry.map((r) => `${r.method} ${r.path}`).sort())
    expect(new Set(mounted).size).toBe(mounted.length)
    expect(new Set(registry.map((r) => r.id)).size).toBe(registry.length)
  })
})

describe.each(RUNTIMES)('the contract on %s', (runtime) => {
  let world: World
  let call: Caller
  beforeAll(async () => {
    world = await openWorld({ runtime })
    call = callerOf(world)
  })
  afterAll(() => world.close())

  const open = async () => (await call('POST', base, { json: {} })).json
  const put = (e: Json, question: string, json: Json, more: object = {}) =>
    call('PUT', `${base}/${e.id}/answers/${question}`, { key: e.key, json, ...more })

  it('describes itself as valid OpenAPI 3.1, every route of the API in it', async () => {
    const { json } = await call('GET', '/openapi.json')
    const verdict = await new Validator().validate(json)
    expect(verdict.errors).toBeUndefined()
    expect(verdict.valid).toBe(true)
    expect(json.openapi).toMatch(/^3\.1\./)
    const described = Object.entries<Json>(json.paths).flatMap(([path, methods]) =>
      Object.keys(methods).map((m) => `${m.toUpperCase()} ${path.replace(/\{(\w+)\}/g, ':$1')}`),
    )
    const api = registry.filter((r) => r.face === 'api' && r.id !== 'openapi')
    expect(described.sort()).toEqual(api.map((r) => `${r.method} ${r.path}`).sort())
  })

  it('answers 400 to what is no JSON, 415 to another media type', async () => {
    const e = await open()
    const path = `${base}/${e.id}/answers/${e.question.id}`
    const sent = (body: string, type: string) =>
      call('PUT', path, { key: e.key, body, headers: { 'content-type': type } })
    for (const broken of ['{', '{"value":', 'null x', '\u0000', '{"a":'.repeat(40)])
      expect((await sent(broken, 'application/json')).status, broken).toBe(400)
    const deep = `${'{"a":'.repeat(40)}1${'}'.repeat(40)}`
    expect((await sent(deep, 'application/json')).status).toBe(400)
    for (const type of ['text/plain', 'application/xml', 'multipart/form-data', ''])
      expect((await sent('{}', type)).status, type).toBe(415)
    expect((await sent('{"unsure":1}', 'application/json; charset=utf-8')).status).toBe(422)
  })

  it('answers 404 to questions nobody asks, 409 to one that is not asked now', async () => {
    const e = await open()
    expect((await put(e, 'no-such-question', { value: 1 })).status).toBe(404)
    const { questions } = (await call('GET', '/api/v1/script', { key: world.ownerKey })).json
    const later = questions.filter((q: Json) => q.stage !== 'send' && q.id !== e.question.id)
    const statuses = new Set<number>()
    for (const q of later) statuses.add((await put(e, q.id, answerByKind(q))).status)
    // Some questions wait for others; none of them is taken out of turn.
    expect([...statuses]).toContain(409)
    expect([...statuses].filter((s) => s !== 409 && s !== 200)).toEqual([])
  })

  it('names every fault by its pointer in one answer of 422', async () => {
    const e = await open()
    const both = await put(e, e.question.id, { value: 'x', unsure: true })
    expect(both.status).toBe(422)
    expect(pointers((await put(e, e.question.id, {})).json)).toEqual(['/value'])
    const extra = await put(e, e.question.id, { value: 'x', more: 1, 'a/b~c': 2 })
    expect(pointers(extra.json)).toEqual(['/a~1b~0c', '/more'])
    const many = await call('POST', '/api/v1/estimates', {
      key: world.ownerKey,
      json: {
        answers: { year: { value: 'soon' }, unknown: { value: 1 }, size: { value: 'huge' } },
      },
    })
    expect(many.status).toBe(422)
    const wrong = new Set(pointers(many.json).map((at) => at.split('/').slice(0, 3).join('/')))
    expect([...wrong].sort()).toEqual(['/answers/size', '/answers/unknown', '/answers/year'])
    const lines = [{ id: 'short', kind: 'noted', body: {}, device: 'd', n: -1, at: 0 }]
    const wanted = await call('POST', `/api/v1/dockets/${e.id}/lines`, {
      key: world.ownerKey,
      json: { lines },
    })
    expect(pointers(wanted.json)).toEqual(['/lines/0/id', '/lines/0/n'])
  })

  it('answers 412 to a revision that is not the last, and takes the right one', async () => {
    const e = await open()
    const value = answerByKind(e.question)
    expect((await put(e, e.question.id, value, { match: e.rev + 1 })).status).toBe(412)
    expect((await put(e, e.question.id, value, { match: 'x' })).status).toBe(412)
    const good = await put(e, e.question.id, value, { match: e.rev })
    expect(good.status).toBe(200)
    expect(good.headers.get('etag')).toBe(`"${good.json.rev}"`)
    const stale = await put(e, e.question.id, value, { match: e.rev })
    expect(stale.json).toMatchObject({ status: 412, code: 'stale', rev: good.json.rev })
  })

  it('answers 413 over the socket, before and while the body comes', async () => {
    const e = await open()
    const path = `${base}/${e.id}/answers/${e.question.id}`
    const long = JSON.stringify({ value: 'x'.repeat(300_000) })
    const headers = { 'content-type': 'application/json' }
    expect((await call('PUT', path, { key: e.key, body: long, headers })).status).toBe(413)
    const pieces = new ReadableStream({
      start: (c) => {
        for (let i = 0; i < 10; i += 1) c.enqueue(new TextEncoder().encode('x'.repeat(40_000)))
        c.close()
      },
    })
    const streamed = await world.fetch(path, {
      method: 'PUT',
      headers: { ...headers, authorization: `Bearer ${e.key}` },
      body: pieces,
      duplex: 'half',
    } as RequestInit)
    expect(streamed.status).toBe(413)
    await streamed.arrayBuffer()
    expect((await call('GET', `${base}/${e.id}`, { key: e.key })).json.answers).toEqual([])
  })

  it('gives the first answer to the same key, and 422 to the key with another body', async () => {
    const sent = (key: string, json: Json) =>
      call('POST', base, { json, headers: { 'idempotency-key': key } })
    const first = await sent('"one-and-the-same"', {})
    const second = await sent('"one-and-the-same"', {})
    expect(second.json).toEqual(first.json)
    expect(second.headers.get('idempotency-replayed')).toBe('true')
    expect((await sent('one-and-the-same', {})).json.id).toBe(first.json.id)
    const other = await sent('"one-and-the-same"', { language: 'de' })
    expect(other.json).toMatchObject({ status: 422, code: 'key-reused' })
    expect((await sent('"another"', {})).json.id).not.toBe(first.json.id)
    for (const bad of ['""', '"a', 'a b', `"${'x'.repeat(201)}"`])
      expect((await sent(bad, {})).status, bad).toBe(422)
    const many = await Promise.all(Array.from({ length: 8 }, () => sent('"all-at-once"', {})))
    expect(new Set(many.map((a) => a.json.id)).size).toBe(1)
  })
})

describe('the limits of how often', () => {
  const limited = registry.filter((r) => r.rate !== undefined)

  it('hold for every route that changes something for the public or a customer', () => {
    const open = registry.filter(
      (r) => r.method !== 'GET' && (r.rights === 'public' || r.rights === 'customer'),
    )
    expect(open.filter((r) => r.rate === undefined).map((r) => r.id)).toEqual([])
    expect(limited.length).toBeGreaterThan(10)
  })

  it('answer 429 with Retry-After, each address for itself, until the minute is over', async () => {
    const world = await openWorld({ runtime: 'node', trustProxy: true })
    const call = callerOf(world)
    const open = (from: string) =>
      call('POST', base, { json: {}, headers: { 'x-forwarded-for': `198.51.100.1, ${from}` } })
    const rule = registry.find((r) => r.id === 'enquiry.open')?.rate
    const most = rule?.perMinute ?? 0
    for (let i = 0; i < most; i += 1) expect((await open('203.0.113.7')).status).toBe(201)
    const refused = await open('203.0.113.7')
    expect(refused.status).toBe(429)
    const wait = Number(refused.headers.get('retry-after'))
    expect(wait).toBeGreaterThan(0)
    expect(wait).toBeLessThanOrEqual(60)
    expect((await open('203.0.113.8')).status).toBe(201)
    expect((await open('2001:db8::1')).status).toBe(201)
    const { clock } = world
    if (clock) clock.now += wait * 1000
    expect((await open('203.0.113.7')).status).toBe(201)
    await world.close()
  })

  it('do not believe what a caller says of its address unless told to', async () => {
    const world = await openWorld({ runtime: 'node' })
    const call = callerOf(world)
    const guess = (i: number) =>
      call('POST', '/api/v1/session', {
        json: { code: `guessed-code-number-${i}` },
        headers: { 'x-forwarded-for': `203.0.113.${i}`, 'cf-connecting-ip': `203.0.113.${i}` },
      })
    const most = registry.find((r) => r.id === 'session.open')?.rate?.perMinute ?? 0
    const statuses: number[] = []
    for (let i = 0; i <= most; i += 1) statuses.push((await guess(i)).status)
    expect(statuses).toEqual([...new Array(most).fill(401), 429])
    await world.close()
  })
})

describe('days', () => {
  it('that are in no calendar are refused, and one far away is no fault', async () => {
    const world = await preparedWorld(await prepared())
    const call = callerOf(world)
    const { quoted, dated } = (await prepared()).dockets
    const key = world.ownerKey
    for (const start of ['2345-94-57', '2027-02-29', '0000-00-00']) {
      const trial = await call('POST', `/api/v1/dockets/${quoted.id}/trial`, {
        key,
        json: { start },
      })
      expect(trial.status, start).toBe(422)
      expect(trial.json.errors[0].pointer).toBe('/start')
      const own = { key, match: dated.rev, json: { start } }
      expect((await call('POST', `/api/v1/dockets/${dated.id}/date`, own)).status, start).toBe(422)
    }
    for (const start of ['2099-12-31', '1970-01-01']) {
      const { status } = await call('POST', `/api/v1/dockets/${quoted.id}/trial`, {
        key,
        json: { start },
      })
      expect([200, 422], start).toContain(status)
    }
    await world.close()
  })
})

describe('amounts', () => {
  it('too large to be added up exactly are refused by name, and the largest allowed are exact', async () => {
    const world = await preparedWorld(await prepared())
    const call = callerOf(world)
    const { id } = (await prepared()).dockets.quoted
    const trial = (amounts: readonly number[]) =>
      call('POST', `/api/v1/dockets/${id}/trial`, {
        key: world.ownerKey,
        json: { adjustments: amounts.map((amount) => ({ kind: 'surcharge', amount, why: 'x' })) },
      })
    const refused = await trial([1, Number.MAX_SAFE_INTEGER])
    expect(refused.status).toBe(422)
    expect(refused.json.errors).toMatchObject([
      { pointer: '/adjustments/1/amount', code: 'ERR_AMOUNT_TOO_LARGE' },
    ])
    const before = (await trial([])).json.offer.net
    const most = await trial(new Array(200).fill(100_000_000_000))
    expect(most.status).toBe(200)
    expect(Number.isSafeInteger(most.json.offer.total)).toBe(true)
    expect(most.json.offer.net).toBeGreaterThanOrEqual(200 * 100_000_000_000 + before - 1_000)
    await world.close()
  })
})
