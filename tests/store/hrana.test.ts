import { type Client, createClient } from '@libsql/client/http'
import { afterAll, afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type HranaServer, startHrana } from '../../dev/hrana'
import { makeFolder } from './stores'

// The client is the published one; what it says of the server is the check from outside.
describe('the libSQL endpoint for tests', () => {
  const { folder, remove } = makeFolder()
  let server: HranaServer
  let client: Client
  let n = 0
  const start = async (options: { txTimeoutMs?: number; idleMs?: number } = {}) => {
    server = await startHrana({ file: `${folder}/${n++}.db`, ...options })
    client = createClient({ url: server.url, intMode: 'bigint' })
    await client.execute('CREATE TABLE t (id INTEGER PRIMARY KEY, a TEXT UNIQUE)')
    server.reset()
  }
  beforeEach(() => start())
  afterEach(async () => {
    client.close()
    await server.close()
  })
  afterAll(remove)
  const ids = async () =>
    (await client.execute('SELECT id FROM t ORDER BY id')).rows.map((r) => r.id)

  it('tells changed rows and the last id, also with RETURNING', async () => {
    const result = await client.execute(`INSERT INTO t VALUES (5, 'x'), (6, 'y') RETURNING id`)
    expect(result).toMatchObject({ rowsAffected: 2, lastInsertRowid: 6n, columns: ['id'] })
    expect((await client.execute('SELECT * FROM t')).rowsAffected).toBe(0)
  })

  it('binds by name and gives every type back', async () => {
    const args = { a: 2n ** 62n, b: 0.5, c: 'é', d: null, e: new Uint8Array([1]).buffer }
    const [row] = (await client.execute({ sql: 'SELECT :a, $b, @c, :d, :e', args })).rows
    expect([row?.[0], row?.[1], row?.[2], row?.[3]]).toEqual([2n ** 62n, 0.5, 'é', null])
    expect([...new Uint8Array(row?.[4] as ArrayBuffer)]).toEqual([1])
  })

  it('gives base error codes with the message of the database', async () => {
    await client.execute(`INSERT INTO t VALUES (1, 'x')`)
    const again = client.execute(`INSERT INTO t VALUES (2, 'x')`)
    await expect(again).rejects.toMatchObject({
      code: 'SQLITE_CONSTRAINT',
      message: expect.stringContaining('UNIQUE constraint failed: t.a'),
    })
    await expect(client.execute('SELECT 1; SELECT 2')).rejects.toMatchObject({
      code: 'SQL_MANY_STATEMENTS',
    })
  })

  it('runs a script, and a migration', async () => {
    await client.executeMultiple(`INSERT INTO t VALUES (1, 'a;b'); INSERT INTO t VALUES (2, 'c');`)
    await client.migrate(['CREATE TABLE u (x)', 'INSERT INTO u VALUES (1)'])
    expect(server.counts().pipelines).toBe(2)
    expect(await ids()).toEqual([1n, 2n])
  })

  it('keeps a transaction on its stream, and rolls back what is not committed', async () => {
    const kept = await client.transaction('write')
    await kept.execute('INSERT INTO t (id) VALUES (1)')
    await kept.commit()
    const lost = await client.transaction('write')
    await lost.execute('INSERT INTO t (id) VALUES (2)')
    await lost.rollback()
    expect(await ids()).toEqual([1n])
  })

  it('lets a writer wait for the one before without blocking readers', async () => {
    const first = await client.transaction('write')
    await first.execute('INSERT INTO t (id) VALUES (1)')
    const second = client.batch(['INSERT INTO t (id) VALUES (2)'], 'write')
    expect(await ids()).toEqual([])
    await first.commit()
    await second
    expect(await ids()).toEqual([1n, 2n])
  })

  it('ends a transaction that stays open too long, and frees the lock', async () => {
    client.close()
    await server.close()
    await start({ txTimeoutMs: 20 })
    const slow = await client.transaction('write')
    await slow.execute('INSERT INTO t (id) VALUES (1)')
    await client.batch(['INSERT INTO t (id) VALUES (2)'], 'write')
    await expect(slow.execute('SELECT 1')).rejects.toMatchObject({ code: 'TRANSACTION_TIMEOUT' })
    expect(await ids()).toEqual([2n])
  })

  it('does not know a stream that is over', async () => {
    const body = JSON.stringify({ baton: 'made-up', requests: [] })
    const answer = await fetch(`${server.url}/v2/pipeline`, { method: 'POST', body })
    expect(answer.status).toBe(400)
    expect(await answer.json()).toMatchObject({ code: 'STREAM_EXPIRED' })
    expect((await fetch(`${server.url}/v2`)).status).toBe(200)
    expect((await fetch(`${server.url}/v3`)).status).toBe(404)
  })
})
