import { connect } from 'node:net'
import { afterAll, describe, expect, it } from 'vitest'
import { MACHINE_GATE } from '../../src/routes/http/gate'
import { registry } from '../../src/routes/registry'
import { callerOf } from '../support/caller'
import { grey } from '../support/picture'
import { openWorld, type World, type WorldOptions } from '../support/world'
import { prepared, preparedWorld } from './stages'

const opened: World[] = []
const open = async (options: Partial<WorldOptions> = {}): Promise<World> => {
  const world = await openWorld({ runtime: 'node', ...options })
  opened.push(world)
  return world
}
afterAll(async () => {
  for (const world of opened) await world.close()
})

const SLOW = { headersTimeout: 300, requestTimeout: 300, connectionsCheckingInterval: 50 }
const base = '/api/v1/enquiries'
const mostOf = (id: string): number => registry.find((r) => r.id === id)?.rate?.perMinute ?? 0

describe.each([
  ['a file', {}],
  ['HTTP', { http: true }],
] as const)('the counts of a minute, over %s', (_, options) => {
  it('are exact however many ask at once', async () => {
    const call = callerOf(await open(options))
    const most = mostOf('session.open')
    const guesses = await Promise.all(
      Array.from({ length: 4 * most }, (_, i) =>
        call('POST', '/api/v1/session', { json: { code: `guessed-code-number-${i}` } }),
      ),
    )
    const statuses = guesses.map((g) => g.status)
    expect(statuses.filter((s) => s === 401)).toHaveLength(most)
    expect(statuses.filter((s) => s === 429)).toHaveLength(3 * most)
  })

  it('hold for what was done, too: nothing beyond them is kept', async () => {
    const world = await open(options)
    const call = callerOf(world)
    const most = mostOf('enquiry.open')
    const answers = await Promise.all(
      Array.from({ length: most + 40 }, () => call('POST', base, { json: {} })),
    )
    expect(answers.filter((a) => a.status === 201)).toHaveLength(most)
    expect(answers.filter((a) => a.status === 429)).toHaveLength(40)
  })
})

describe('the counts', () => {
  it('take in what is refused: nonsense is not free', async () => {
    const call = callerOf(await open())
    const most = mostOf('enquiry.open')
    const bad = [
      { json: { mood: 1 } },
      { body: '{', headers: { 'content-type': 'application/json' } },
    ]
    for (let i = 0; i < most; i += 1)
      expect([400, 422]).toContain((await call('POST', base, bad[i % 2] ?? {})).status)
    expect((await call('POST', base, { json: {} })).status).toBe(429)
  })

  it('are for a docket as well, wherever its key is used from, and strangers do not fill them', async () => {
    const p = await prepared()
    const world = await preparedWorld(p, { trustProxy: true })
    opened.push(world)
    const call = callerOf(world)
    const { ready, other } = p.dockets
    const ask = async (i: number, of: string, key: string): Promise<number> => {
      const headers = { 'x-forwarded-for': `203.0.113.${i % 250}` }
      return (await call('POST', `${base}/${of}/links`, { key, json: {}, headers })).status
    }
    const most = mostOf('enquiry.link')
    for (let i = 0; i < most; i += 1) expect(await ask(i, ready.id, other.key)).toBe(404)
    for (let i = 0; i < most; i += 1) expect(await ask(i, ready.id, ready.key)).toBe(201)
    expect(await ask(249, ready.id, ready.key)).toBe(429)
    expect(await ask(249, other.id, other.key)).toBe(201)
  })
})

describe('the gate in front', () => {
  it('turns an address away before the database is asked', async () => {
    const world = await open({ gate: { ...MACHINE_GATE, perMinute: 5 }, trustProxy: true })
    const call = callerOf(world)
    const from = (address: string) =>
      call('POST', base, { json: {}, headers: { 'x-forwarded-for': address } })
    for (let i = 0; i < 5; i += 1) expect((await from('203.0.113.7')).status).toBe(201)
    world.resetTrips()
    const refused = await from('203.0.113.7')
    expect(refused.status).toBe(429)
    expect(Number(refused.headers.get('retry-after'))).toBeGreaterThan(0)
    expect(world.trips()).toEqual({ reads: 0, writes: 0 })
    expect((await from('203.0.113.8')).status).toBe(201)
    expect((await call('GET', '/healthz', {})).status).toBe(200)
  })

  it('counts bytes too, refused ones included', async () => {
    const world = await open({ gate: { ...MACHINE_GATE, bytesPerMinute: 1000 } })
    const call = callerOf(world)
    const send = () => call('POST', base, { json: { language: 'x'.repeat(400) } })
    expect([(await send()).status, (await send()).status]).toEqual([422, 422])
    expect((await send()).status).toBe(429)
  })
})

describe('a body', () => {
  it('of thousands of parts, or nested without end, is refused', async () => {
    const world = await open()
    const call = callerOf(world)
    const form = new FormData()
    for (let i = 0; i < 4_100; i += 1) form.append('a', '')
    const { id, key } = (await call('POST', base, { json: {} })).json
    form.set('file', new Blob([grey()], { type: 'image/png' }), 'a.png')
    expect((await call('POST', `${base}/${id}/photos`, { key, body: form })).status).toBe(413)
    const json = { 'content-type': 'application/json' }
    for (const body of [
      '['.repeat(14) + ']'.repeat(14),
      '['.repeat(100_000),
      '{"a":'.repeat(40_000),
    ])
      expect((await call('POST', base, { body, headers: json })).status).toBe(400)
  })

  it('that comes too slowly loses its line, and the next caller does not wait', async () => {
    const world = await open({ server: SLOW })
    const { port, host } = new URL(world.baseUrl)
    const socket = connect(Number(port), host.split(':')[0])
    const said = new Promise<string>((done) => {
      let all = ''
      socket.on('data', (chunk) => {
        all += chunk.toString('latin1')
      })
      socket.on('close', () => done(all))
      socket.on('error', () => done(all))
    })
    socket.write(
      'POST /api/v1/enquiries HTTP/1.1\r\nhost: x\r\ncontent-type: application/json\r\ncontent-length: 100\r\n\r\n{',
    )
    expect((await callerOf(world)('POST', base, { json: {} })).status).toBe(201)
    expect(await said).toMatch(/^HTTP\/1\.1 408 /)
  })
})
