import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Fault, HranaServer } from '../../dev/hrana'
import type { Db } from '../../src/store/db'
import { openHttpDb } from '../../src/store/http'
import { reserveKey } from '../../src/store/idempotency'
import { migrate } from '../../src/store/migrate'
import { dbErrorOf, raw, storeContract } from './contract'
import { makeHttpStore } from './stores'

storeContract('HTTP', () => makeHttpStore())

describe('a remote database', () => {
  let db: Db
  let server: HranaServer
  let dispose: () => Promise<void>
  beforeEach(async () => {
    const store = await makeHttpStore()
    ;({ db, server, dispose } = store)
    await migrate(db, 1)
    server.reset()
  })
  afterEach(() => dispose())

  const write = (id: string, options?: { retry: boolean }) => {
    const row = { scope: 's', key: id, fingerprint: 'f', status: 200, body: null, at: 1 }
    return db.write(reserveKey({ ...row, expiresAt: 9 }), options)
  }
  const kept = async () => {
    server.reset()
    const [rows = []] = await db.read([raw('SELECT key FROM idempotency ORDER BY key')])
    return rows.map((row) => row.key)
  }

  it('costs one round trip per batch, read or write', async () => {
    await db.read([raw('SELECT 1'), raw('SELECT 2'), raw('SELECT 3')])
    expect(server.counts()).toMatchObject({ pipelines: 1, batches: 1, executes: 0 })
    await write('a')
    expect(server.counts()).toMatchObject({ pipelines: 2, batches: 2, executes: 0 })
  })

  const faults: readonly [string, Fault, string, boolean][] = [
    ['500', { kind: 'status', status: 500 }, 'unavailable', false],
    ['503', { kind: 'status', status: 503 }, 'unavailable', false],
    ['429', { kind: 'status', status: 429 }, 'busy', false],
    ['a line cut before', { kind: 'drop-before' }, 'unavailable', false],
    ['a line cut after', { kind: 'drop-after' }, 'unavailable', true],
    ['half an answer', { kind: 'half-body' }, 'unavailable', true],
    ['an answer that is no JSON', { kind: 'not-json' }, 'unavailable', true],
  ]
  it.each(faults)(
    '%s: a write is sent once and fails by the right name',
    async (_, fault, code, ran) => {
      server.faults.always(fault)
      expect((await dbErrorOf(write('a'))).code).toBe(code)
      expect(server.counts().pipelines).toBe(ran ? 1 : 0)
      expect(await kept()).toEqual(ran ? ['a'] : [])
    },
  )

  it.each(faults)(
    '%s: a read is tried once more, but not when asked to slow down',
    async (...args) => {
      const [, fault, code] = args
      server.faults.next(1, fault)
      const reading = db.read([raw('SELECT 7 AS n')])
      if (code === 'unavailable') expect(await reading).toEqual([[{ n: 7 }]])
      else expect((await dbErrorOf(reading)).code).toBe(code)
      server.faults.next(2, fault)
      expect((await dbErrorOf(db.read([raw('SELECT 7 AS n')]))).code).toBe(code)
    },
  )

  it('a write under an idempotency key may be sent again: one row, whatever was lost', async () => {
    server.faults.next(1, { kind: 'drop-before' })
    await write('a', { retry: true })
    server.faults.next(1, { kind: 'drop-after' })
    const error = await dbErrorOf(write('b', { retry: true }))
    expect(error).toMatchObject({
      code: 'conflict',
      constraint: 'idempotency.scope, idempotency.key',
    })
    expect(await kept()).toEqual(['a', 'b'])
  })

  it('that does not answer in time is unavailable', async () => {
    server.faults.always({ kind: 'delay', ms: 60_000 })
    const hasty = openHttpDb({ url: server.url, authToken: 'test-token', timeoutMs: 30 })
    const error = await dbErrorOf(hasty.read([raw('SELECT 1')]))
    expect(error).toMatchObject({ code: 'unavailable' })
    expect(error.message).toMatch(/TimeoutError/)
  })

  it('that is not there, or refuses our token, is unavailable', async () => {
    const wrong = openHttpDb({ url: server.url, authToken: 'wrong' })
    expect((await dbErrorOf(wrong.read([raw('SELECT 1')]))).message).toMatch(/401/)
    await server.close()
    expect((await dbErrorOf(db.read([raw('SELECT 1')]))).code).toBe('unavailable')
  })
})
