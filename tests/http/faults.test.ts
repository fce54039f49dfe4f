import Database from 'libsql'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Fault } from '../../dev/hrana'
import { unzipBytes } from '../../scripts/transfer/unzip'
import { registry } from '../../src/routes/registry'
import type { Route } from '../../src/routes/route'
import { callerOf } from '../support/caller'
import { openWorld, RUNTIMES, type World } from '../support/world'
import { least, showing } from './actors'
import { sampleOf, statusOf } from './samples'
import { type Prepared, prepared } from './stages'

/** Faults that end before anything took effect, so that one database does for all routes. */
const BEFORE: readonly Fault[] = [
  { kind: 'status', status: 429 },
  { kind: 'status', status: 500 },
  { kind: 'status', status: 503 },
  { kind: 'drop-before' },
]
/** Faults after it took effect: for what only reads. */
const AFTER: readonly Fault[] = [
  { kind: 'drop-after' },
  { kind: 'half-body' },
  { kind: 'not-json' },
]

let p: Prepared
beforeAll(async () => {
  p = await prepared()
})

const send = (world: World, route: Route, more: Readonly<Record<string, string>> = {}) => {
  const { method, path, sent } = sampleOf(route, p)
  const headers = { ...sent.headers, ...showing(least(route), route, p), ...more }
  return callerOf(world)(method, path, { ...sent, headers })
}

/** What is made while it is sent has its good status before the database is asked. */
const STREAMS = new Set(['export.zip', 'export.view'])

describe('every route of the built Worker over a database that is away', () => {
  let world: World
  beforeAll(async () => {
    world = await openWorld({ runtime: 'worker', from: p.from })
    // The Worker's clock is the machine's: what was given out then must still hold now.
    const db = new Database(world.file, { timeout: 5000 } as Database.Options)
    const far = Date.now() + 86_400_000
    db.prepare('UPDATE access SET expires_at = ? WHERE expires_at IS NOT NULL').run(far)
    db.prepare('UPDATE session SET expires_at = ?, seen_at = ?').run(far, Date.now())
    db.close()
  })
  afterAll(() => world.close())

  it('answers 503 with Retry-After whatever the fault, or does not need it', async () => {
    const unneeded = new Set<string>()
    for (const route of registry.filter((r) => !STREAMS.has(r.id)))
      for (const fault of route.method === 'GET' ? [...BEFORE, ...AFTER] : BEFORE) {
        world.hrana?.reset()
        world.hrana?.faults.always(fault)
        const answer = await send(world, route)
        const asked = world.trips()
        const name = `${route.id}, ${JSON.stringify(fault)}: ${answer.text.slice(0, 200)}`
        if (asked.reads + asked.writes === 0 && answer.status < 400) unneeded.add(route.id)
        else {
          expect(answer.status, name).toBe(503)
          expect(Number(answer.headers.get('retry-after')), name).toBeGreaterThan(0)
        }
      }
    world.hrana?.reset()
    expect([...unneeded]).toEqual([])
  })

  it('reads once more after a fault that passes, and shows what is true', async () => {
    // Pictures' bytes are not in the Worker's bucket here.
    const safe = registry.filter(
      (r) => r.method === 'GET' && !STREAMS.has(r.id) && !r.path.includes(':photo'),
    )
    for (const route of safe)
      for (const fault of [...BEFORE.slice(1), ...AFTER]) {
        world.hrana?.reset()
        world.hrana?.faults.next(1, fault)
        const answer = await send(world, route)
        const name = `${route.id}, ${JSON.stringify(fault)}`
        expect([statusOf(route), 503], name).toContain(answer.status)
        if (route.rate === undefined) expect(answer.status, name).toBe(statusOf(route))
      }
    world.hrana?.reset()
  })
})

const opens = async (bytes: ArrayBuffer): Promise<boolean> => {
  try {
    for await (const { name } of unzipBytes(new Uint8Array(bytes))) if (name === '') return false
    return true
  } catch {
    return false
  }
}

describe.each(RUNTIMES)('an export whose database goes away in the middle, on %s', (runtime) => {
  it('is broken off: it never ends as if it were whole', async () => {
    const world = await openWorld({ runtime, http: true, from: p.from })
    const headers = { authorization: `Bearer ${world.ownerKey}` }
    const take = async (): Promise<ArrayBuffer | null> => {
      const answer = await world.fetch('/api/v1/export/zip', { headers })
      return answer.ok ? answer.arrayBuffer().catch(() => null) : null
    }
    world.hrana?.faults.later(1, 2, { kind: 'drop-before' })
    const cut = await take().catch(() => null)
    expect(cut === null || !(await opens(cut))).toBe(true)
    world.hrana?.reset()
    // The line that was cut may be taken up by the client once more.
    const whole = await take().catch(take)
    expect(whole !== null && (await opens(whole))).toBe(true)
    await world.close()
  })
})

const TABLES = [
  'head',
  'line',
  'free_text',
  'person',
  'photo',
  'access',
  'session',
  'outbox',
  'settings',
  'estimate',
]

const counts = (world: World): Readonly<Record<string, number>> => {
  const db = new Database(world.file, { timeout: 5000 } as Database.Options)
  try {
    return Object.fromEntries(
      TABLES.map((t) => [
        t,
        (db.prepare(`SELECT count(*) AS n FROM ${t}`).get() as { n: number }).n,
      ]),
    )
  } finally {
    db.close()
  }
}

const repeatable = registry.filter((r) => r.method === 'POST' && r.face === 'api')

describe.each(repeatable.map((r) => [r.id, r] as const))('%s under a key', (_id, route) => {
  it('takes effect once, whichever answer of the database was lost on the way', async () => {
    const key = { 'idempotency-key': '"the-same-request"' }
    const clean = await openWorld({ runtime: 'node', http: true, from: p.from, seed: 'once' })
    const first = await send(clean, route, key)
    expect(first.status).toBe(statusOf(route))
    const wanted = counts(clean)
    await clean.close()
    for (const kind of ['drop-before', 'drop-after', 'half-body'] as const) {
      const world = await openWorld({ runtime: 'node', http: true, from: p.from, seed: 'once' })
      world.hrana?.faults.later(1, 1, { kind })
      const answers = [await send(world, route, key), await send(world, route, key)]
      for (const { status } of answers) expect([statusOf(route), 503], kind).toContain(status)
      expect(answers.at(-1)?.status, kind).toBe(statusOf(route))
      expect(counts(world), kind).toEqual(wanted)
      await world.close()
    }
  })
})
