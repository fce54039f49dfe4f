import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type HranaServer, startHrana } from '../../dev/hrana'
import type { Db } from '../../src/store/db'
import { openFileDb } from '../../src/store/file'
import { openHttpDb } from '../../src/store/http'

/** A fresh database for one test. `server` is there when it is reached over HTTP. */
export type TestStore = {
  readonly db: Db
  readonly file: string
  readonly server?: HranaServer
  dispose(): Promise<void>
}

/** A fresh folder, and how to get rid of it. */
export const makeFolder = () => {
  const folder = mkdtempSync(join(tmpdir(), 'jambside-'))
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) }
}

export const makeFileStore = async (): Promise<TestStore> => {
  const { folder, remove } = makeFolder()
  const file = join(folder, 'test.db')
  const db = await openFileDb(file, { waitMs: 1 })
  return { db, file, dispose: () => db.close().then(remove) }
}

export const makeHttpStore = async (
  timeoutMs = 3000,
): Promise<TestStore & { server: HranaServer }> => {
  const { folder, remove } = makeFolder()
  const file = join(folder, 'test.db')
  const server = await startHrana({ file, token: 'test-token' })
  const db = openHttpDb({ url: server.url, authToken: 'test-token', timeoutMs })
  const dispose = async () => {
    await db.close()
    await server.close()
    remove()
  }
  return { db, file, server, dispose }
}
