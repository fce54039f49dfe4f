import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { registry } from '../../src/routes/registry'
import type { Route } from '../../src/routes/route'
import { openWorld, type World } from '../support/world'
import { least, showing } from './actors'
import { pathOf, sampleOf, stageOf } from './samples'
import { type Prepared, prepared, preparedWorld } from './stages'

/** What must never stand in a log; each is told from any other text at a glance. */
const CANARY = {
  name: 'Canarina Quillfeather',
  email: 'canary.bird@example.org',
  phone: '+44 1632 960 983',
  vin: '1M8GDM9AXKP042788',
  text: 'a-canary-sang-in-the-boot',
  key: 'canary-key-canary-key-canary-key-canary-key-x',
}
const ALLOWED = ['requestId', 'route', 'method', 'status', 'code']

let p: Prepared
let world: World
beforeAll(async () => {
  p = await prepared()
  world = await preparedWorld(p)
})
afterAll(() => world.close())

/** Everything secret that a route can be sent, in every place it can be sent in. */
const attempts = (route: Route): readonly (readonly [string, RequestInit])[] => {
  const { path, method, sent } = sampleOf(route, p)
  const headers = { ...showing(least(route), route, p) }
  const match: Record<string, string> =
    sent.match === undefined ? {} : { 'if-match': `"${sent.match}"` }
  const json = { 'content-type': 'application/json' }
  const spoilt = pathOf(
    route,
    Object.fromEntries(
      [...route.path.matchAll(/:(\w+)/g)].map(([, part]) => [part ?? '', CANARY.key]),
    ),
  )
  const query = new URLSearchParams({ ...CANARY, q: CANARY.email, after: CANARY.key })
  const telling = {
    authorization: `Bearer ${CANARY.key}`,
    cookie: `js=${CANARY.key}; jd-${p.dockets[stageOf(route)].id}=${CANARY.key}`,
    'sec-fetch-site': 'same-origin',
    'idempotency-key': CANARY.key,
    'user-agent': CANARY.name,
    referer: `https://x.example/${CANARY.email}`,
  }
  const body = (text: string): RequestInit => ({
    method,
    headers: { ...headers, ...match, ...json },
    ...(method === 'GET' ? {} : { body: text }),
  })
  const form = (fields: object): RequestInit => ({
    method,
    headers,
    ...(method === 'GET' ? {} : { body: new URLSearchParams({ ...fields }) }),
  })
  return [
    [path, { method, headers: telling }],
    [`${path}?${query}`, { method, headers }],
    [spoilt, { method, headers }],
    [path, body(JSON.stringify({ value: CANARY, ...CANARY, [CANARY.email]: 1 }))],
    [path, body(`{"broken": "${CANARY.text}`)],
    [path, body(JSON.stringify(CANARY.text))],
    [path, form({ ...CANARY, value: CANARY.text, decision: 'ask', once: CANARY.key })],
  ]
}

const secrets = () => [
  ...Object.values(CANARY),
  p.ownerKey,
  p.code,
  p.owner.split('=')[1] ?? '',
  p.bench.split('=')[1] ?? '',
  ...Object.values(p.dockets).map((d) => d.key),
  'Robin Ash',
  'robin.ash@example.org',
]

const told = (lines: readonly string[]): readonly string[] =>
  lines.filter((line) => secrets().some((secret) => line.includes(secret)))

describe('what a person typed, and every key', () => {
  it('never stand in the log, whatever route they are sent to', async () => {
    let sent = 0
    for (const route of registry)
      for (const [path, init] of attempts(route)) {
        const answer = await world.fetch(path, init)
        expect(answer.status, `${route.id} ${path}`).not.toBe(500)
        await answer.arrayBuffer()
        sent += 1
      }
    expect(sent).toBe(registry.length * 7)
    expect(world.logs().length).toBeGreaterThan(sent * 0.9)
    expect(told(world.logs())).toEqual([])
    // The search itself finds what is there.
    expect(told([`{"route":"${CANARY.key}"}`]).length).toBe(1)
    for (const line of world.logs())
      expect(Object.keys(JSON.parse(line)).filter((k) => !ALLOWED.includes(k))).toEqual([])
  })

  it('never come back in a problem of the API', async () => {
    for (const route of registry.filter((r) => r.face === 'api')) {
      const answers = attempts(route).slice(3, 6)
      for (const [path, init] of answers) {
        const answer = await world.fetch(path, init)
        const text = await answer.text()
        if (answer.status < 400) continue
        for (const typed of [CANARY.name, CANARY.phone, CANARY.vin, CANARY.text])
          expect(text, route.id).not.toContain(typed)
      }
    }
    expect(registry.length).toBeGreaterThan(50)
  })
})

describe('on the edge', () => {
  it('they do not stand in the log of the Worker, nor when its database is away', async () => {
    const edge = await openWorld({ runtime: 'worker' })
    const open = await edge.fetch('/api/v1/enquiries', { method: 'POST' })
    const { id, key } = (await open.json()) as { id: string; key: string }
    const ask = async () => {
      for (const path of [`/api/v1/enquiries/${id}/answers/contact`, `/e/${id}`]) {
        const answer = await edge.fetch(path, {
          method: path.startsWith('/e/') ? 'GET' : 'PUT',
          headers: {
            'content-type': 'application/json',
            authorization: `Bearer ${key}`,
            'user-agent': CANARY.name,
          },
          ...(path.startsWith('/e/') ? {} : { body: JSON.stringify({ value: CANARY }) }),
        })
        await answer.arrayBuffer()
      }
    }
    await ask()
    for (const kind of ['drop-before', 'half-body', 'not-json'] as const) {
      edge.hrana?.faults.always({ kind })
      await ask()
    }
    edge.hrana?.faults.always({ kind: 'status', status: 500 })
    await ask()
    // The runtime hands its lines over when it ends.
    await edge.close()
    expect(edge.logs().length).toBeGreaterThanOrEqual(11)
    const all = edge.logs().filter((l) => [...secrets(), key].some((s) => l.includes(s)))
    expect(all).toEqual([])
  })
})
