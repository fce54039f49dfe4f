import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { registry } from '../../src/routes/registry'
import type { Route } from '../../src/routes/route'
import { openWorld, type World } from '../support/world'
import { least, showing } from './actors'
import { sampleOf } from './samples'
import { type Prepared, prepared, preparedWorld } from './stages'

let p: Prepared
let world: World
beforeAll(async () => {
  p = await prepared()
  world = await preparedWorld(p)
})
afterAll(() => world.close())

type Headers1 = Readonly<Record<string, string>>
const FOREIGN = 'https://elsewhere.example'
const cookie = { cookie: 'jd-some=thing' }

/** Where a request may say it comes from; the guard reads nothing else. */
const CONTEXTS: readonly (readonly [string, boolean, (own: string) => Headers1])[] = [
  ['a program: neither cookie nor origin', true, () => ({})],
  ['a page of ours, by Sec-Fetch-Site', true, () => ({ 'sec-fetch-site': 'same-origin' })],
  ['a page of ours, by Origin', true, (own) => ({ ...cookie, origin: own })],
  ['both of ours', true, (own) => ({ ...cookie, origin: own, 'sec-fetch-site': 'same-origin' })],
  ['a cookie and no word of where from', false, () => cookie],
  ['another site', false, () => ({ 'sec-fetch-site': 'cross-site' })],
  ['another site with a cookie', false, () => ({ ...cookie, 'sec-fetch-site': 'cross-site' })],
  ['a sister site', false, () => ({ ...cookie, 'sec-fetch-site': 'same-site' })],
  ['typed into the address bar', false, () => ({ ...cookie, 'sec-fetch-site': 'none' })],
  ['another origin', false, () => ({ origin: FOREIGN })],
  ['an origin hidden as null', false, () => ({ ...cookie, origin: 'null' })],
  ['another port of this machine', false, () => ({ origin: 'http://127.0.0.1:1' })],
  [
    'another origin that calls itself ours',
    false,
    () => ({ ...cookie, origin: FOREIGN, 'sec-fetch-site': 'same-origin' }),
  ],
]

const TYPES = [
  'application/json',
  'text/plain',
  'application/x-www-form-urlencoded',
  'multipart/form-data; boundary=x',
]

const unsafe = registry.filter((r) => r.method !== 'GET').map((r) => [r.id, r] as const)

describe.each(unsafe)('%s from elsewhere', (_id, route) => {
  const ask = (headers: Headers1) => {
    const { method, path } = sampleOf(route, p)
    return world.fetch(path, { method, headers, body: '{}' })
  }

  it('is refused for every origin but ours, whatever the media type', async () => {
    for (const [name, may, from] of CONTEXTS)
      for (const type of TYPES) {
        const answer = await ask({ ...from(world.baseUrl), 'content-type': type })
        const body = await answer.text()
        const refused =
          answer.status === 403 &&
          (route.face === 'page' || JSON.parse(body).code === 'forbidden-origin')
        expect(refused, `${name}, ${type}: ${answer.status}`).toBe(!may)
      }
  })
})

const SECURE: readonly (readonly [string, (value: string) => boolean])[] = [
  ['content-security-policy', (v) => /default-src 'none'/.test(v)],
  ['content-security-policy', (v) => !/unsafe|\*|http:|https:/.test(v)],
  // OWASP ASVS 5.0, 3.4.1: at least one year.
  ['strict-transport-security', (v) => Number(/max-age=(\d+)/.exec(v)?.[1]) >= 31_536_000],
  ['x-content-type-options', (v) => v === 'nosniff'],
  ['referrer-policy', (v) => v === 'same-origin'],
  ['cross-origin-opener-policy', (v) => v === 'same-origin'],
  ['cache-control', (v) => v === 'no-store'],
  ['x-request-id', (v) => v.length >= 12],
]

const secure = (what: string, headers: Headers) => {
  for (const [name, good] of SECURE) {
    const value = headers.get(name)
    expect(value !== null && good(value), `${what}: ${name}: ${value}`).toBe(true)
  }
  for (const telling of ['server', 'x-powered-by'])
    expect(headers.get(telling), `${what}: ${telling}`).toBeNull()
}

const send = (route: Route, headers: Headers1, at = world) => {
  const { method, path, sent } = sampleOf(route, p)
  const { match, json } = sent
  return at.fetch(path, {
    method,
    headers: {
      ...(json === undefined ? {} : { 'content-type': 'application/json' }),
      ...(match === undefined ? {} : { 'if-match': `"${match}"` }),
      ...headers,
    },
    body: json === undefined ? (sent.body ?? null) : JSON.stringify(json),
  })
}

describe('security headers', () => {
  it.each(registry.map((r) => [r.id, r] as const))('stand on every answer of %s', async (id, r) => {
    secure(`${id}, nobody`, (await send(r, {})).headers)
    secure(`${id}, from elsewhere`, (await send(r, { origin: FOREIGN })).headers)
    // What ends a session or spends a code would shut the others out.
    const own = /session|sign|device/.test(id) ? await preparedWorld(p) : null
    const done = await send(r, showing(least(r), r, p), own ?? world)
    await own?.close()
    expect([401, 403]).not.toContain(done.status)
    secure(`${id}, done`, done.headers)
  })

  it.each([
    ['GET', '/nothing-here'],
    ['PATCH', '/api/v1/enquiries'],
    ['DELETE', '/'],
    ['GET', '/assets/none.js'],
    ['GET', '/..%2f..%2fetc%2fpasswd'],
    ['GET', '/api/v1/dockets/%ff'],
    ['OPTIONS', '/api/v1/enquiries'],
  ])('stand on %s %s, which is not there', async (method, path) => {
    const answer = await world.fetch(path, { method })
    expect([401, 404]).toContain(answer.status)
    expect(answer.headers.get('content-type')).toBe('application/problem+json')
    secure(path, answer.headers)
  })
})

describe('cookies', () => {
  const open = (at: World) =>
    at.fetch('/e', { method: 'POST', body: new URLSearchParams(), headers: { origin: at.baseUrl } })

  it('are out of reach of scripts and of other sites', async () => {
    const set = (await open(world)).headers.get('set-cookie') ?? ''
    expect(set).toMatch(/^jd-[\w-]{20}=[\w-]{43}; Path=\/; Max-Age=\d+; HttpOnly; SameSite=Lax$/)
  })

  it('are bound to this host behind https', async () => {
    const https = await openWorld({ runtime: 'node', publicUrl: 'https://studio.example' })
    const set = (await open(https)).headers.get('set-cookie') ?? ''
    await https.close()
    expect(set).toMatch(/^__Host-jd-[\w-]{20}=/)
    expect(set).toMatch(/; Path=\/; .*; Secure$/)
    expect(set).not.toMatch(/Domain/i)
  })
})
