import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import type { Fault } from '../../dev/hrana'
import { type Caller, callerOf, type Json } from '../support/caller'
import { openWorld, RUNTIMES, type World } from '../support/world'
import { answerByKind } from './answer-by-kind'

const base = '/api/v1/enquiries'
/** Every switch of the endpoint; a delay cannot be told from a slow answer without waiting for it. */
const FAULTS: readonly Fault[] = [
  { kind: 'status', status: 429 },
  { kind: 'status', status: 500 },
  { kind: 'status', status: 502 },
  { kind: 'status', status: 503 },
  { kind: 'drop-before' },
  { kind: 'drop-after' },
  { kind: 'half-body' },
  { kind: 'not-json' },
]
const named = FAULTS.map((f) => [f.kind === 'status' ? `${f.status}` : f.kind, f] as const)

describe.each(RUNTIMES)('a database that is away, on %s', (runtime) => {
  let world: World
  let call: Caller
  let e: Json
  beforeAll(async () => {
    world = await openWorld({ runtime, http: true })
    call = callerOf(world)
    e = (await call('POST', base, { json: {} })).json
  })
  beforeEach(() => world.hrana?.reset())
  afterAll(() => world.close())

  const put = () =>
    call('PUT', `${base}/${e.id}/answers/${e.question.id}`, {
      key: e.key,
      json: answerByKind(e.question),
    })
  const away = (answer: { status: number; headers: Headers; json: Json }) => {
    expect(answer.status).toBe(503)
    expect(Number(answer.headers.get('retry-after'))).toBeGreaterThan(0)
    expect(answer.json.code).toBe('away')
  }
  const lines = async (): Promise<number> => {
    world.hrana?.reset()
    const path = `/api/v1/dockets/${e.id}/lines`
    return (await call('GET', path, { key: world.ownerKey })).json.lines.length
  }

  it.each(named)(
    '%s: 503 with Retry-After and nothing half done, as long as it lasts',
    async (_n, fault) => {
      const before = await lines()
      world.hrana?.faults.always(fault)
      away(await call('GET', `${base}/${e.id}`, { key: e.key }))
      away(await put())
      away(await call('POST', base, { json: {} }))
      away(await call('POST', '/api/v1/session', { json: { code: 'guessed-code-number-1' } }))
      away(await call('GET', '/api/v1/dockets', { key: world.ownerKey }))
      expect(
        (await world.fetch(`/e/${e.id}`, { headers: { cookie: `jd-${e.id}=${e.key}` } })).status,
      ).toBe(503)
      expect(await lines()).toBe(before)
    },
  )

  it.each(named)('%s for a moment: success or 503, and a success is true', async (_n, fault) => {
    for (const n of [1, 2, 3]) {
      const before = await lines()
      world.hrana?.faults.next(n, fault)
      const answer = await put()
      const after = await lines()
      if (answer.status === 200) expect(after, `${n}`).toBe(before + 1)
      else {
        away(answer)
        // A cut line leaves it open whether the last write arrived; it never arrives by half.
        expect([before, before + 1], `${n}`).toContain(after)
      }
    }
  })

  it.each(named)(
    '%s: a request with a key may be repeated until it is through, and counts once',
    async (n, fault) => {
      const headers = { 'idempotency-key': `"again-${n}"` }
      const decide = () =>
        call('POST', `/api/v1/dockets/${e.id}/lines`, {
          key: world.ownerKey,
          headers,
          json: {
            lines: [
              {
                id: `line-${runtime}-${n}`,
                kind: 'noted',
                body: { text: 'Once.' },
                device: 'd',
                n: 1,
                at: 1,
              },
            ],
          },
        })
      const before = await lines()
      for (const faulty of [2, 3]) {
        world.hrana?.faults.next(faulty, fault)
        const answer = await decide()
        expect([200, 503]).toContain(answer.status)
      }
      world.hrana?.reset()
      const through = await decide()
      expect(through.status).toBe(200)
      expect(through.json.added).toEqual([`line-${runtime}-${n}`])
      expect(await lines()).toBe(before + 1)
    },
  )
})
