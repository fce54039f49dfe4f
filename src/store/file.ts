import { createClient } from '@libsql/client/sqlite3'
import { checkReads, fromDriver, toDriver } from './bind'
import type { Db } from './db'
import { DbError } from './db-error'
import { mapError } from './map-error'
import { oneAtATime } from './one-at-a-time'

/** A database in a file of this machine. */
export type FileDb = Db & {
  /** Rewrites the file and empties the log, so that nothing deleted is left in either. */
  scrub(): Promise<void>
}

/**
 * Opens (and makes) a libSQL file. Node only; one process per file. Commits are on disk when a
 * write resolves (write-ahead log, synchronous FULL). `waitMs`: how long to wait for a lock held by
 * another process; it blocks this one, so it is a net only. Rejects with DbError.
 */
export const openFileDb = async (
  path: string,
  options: { readonly waitMs?: number } = {},
): Promise<FileDb> => {
  const client = open(path, options.waitMs ?? 5000)
  const inTurn = oneAtATime()
  // The driver keeps a statement that met a lock under way, and no transaction of its connection
  // could commit after; so that connection is left for a fresh one.
  const guarded = <T>(work: () => Promise<T>): Promise<T> =>
    inTurn(() =>
      work().catch(async (cause) => {
        const error = mapError(cause)
        if (error.code === 'busy') await client.reconnect()
        throw error
      }),
    )
  const pragma = async (sql: string) => (await client.execute(`PRAGMA ${sql}`)).rows[0]?.[0]

  const expectPragma = async (name: string, wanted: number | string) => {
    const found = await pragma(name)
    if (found !== wanted) {
      throw new DbError('bug', `PRAGMA ${name} is ${String(found)}, must be ${wanted}`)
    }
  }
  // Checked, not set: a connection the driver reopens after a fault has these by itself.
  const checkConnection = async () => {
    await pragma('journal_mode = WAL')
    await expectPragma('journal_mode', 'wal')
    await expectPragma('foreign_keys', 1)
    await expectPragma('synchronous', 2)
  }
  await guarded(checkConnection).catch((error) => {
    client.close()
    throw error
  })

  return {
    read: (stmts) =>
      guarded(async () => {
        checkReads(stmts)
        return fromDriver(await client.batch(toDriver(stmts), 'read'))
      }),
    write: (stmts) =>
      guarded(async () => {
        await pragma('secure_delete = ON')
        return fromDriver(await client.batch(toDriver(stmts), 'write'))
      }),
    scrub: () =>
      guarded(async () => {
        await client.execute('VACUUM')
        await pragma('wal_checkpoint(TRUNCATE)')
      }),
    close: () => inTurn(async () => client.close()),
  }
}

const open = (path: string, timeout: number) => {
  try {
    // One connection: PRAGMAs hold per connection, and a pool would open others without them.
    return createClient({ url: `file:${path}`, concurrency: 1, timeout, intMode: 'number' })
  } catch (cause) {
    throw new DbError('unavailable', `cannot open ${path}: ${String(cause)}`, { cause })
  }
}
