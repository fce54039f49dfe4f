import { createHash } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createAdaptorServer } from '@hono/node-server'
import { buildAssets } from '../../scripts/build'
import { createApp } from '../../src/app'
import { parseConfig } from '../../src/config'
import { openAssets } from '../../src/node-assets'
import { nodeFetch } from '../../src/node-fetch'
import { signInRow } from '../../src/routes/acts/sign-in'
import { newKey, sha256 } from '../../src/routes/http/keys'
import { insertAccess } from '../../src/store/accesses'
import { openFileDb } from '../../src/store/file'
import { migrate } from '../../src/store/migrate'
import { openPhotoFolder } from '../../src/store/photo-folder'

/** 21 September 2026, a Monday, 10:00 UTC. */
export const NOON_BEFORE = Date.UTC(2026, 8, 21, 10)

export type Studio = {
  readonly origin: string
  /** The server's clock stands still until a test moves it. */
  readonly clock: { now: number }
  readonly faults: readonly unknown[]
  readonly signInLink: (rights: 'owner' | 'bench') => Promise<string>
  /** The server goes away and comes back at the same place; what it keeps stays. */
  readonly stop: () => Promise<void>
  readonly start: () => Promise<void>
  /** From now on requests reach the server and hear nothing, until what this gives is called. */
  readonly hang: () => () => void
  readonly close: () => Promise<void>
}

/** Bytes that look random and are the same in every run. */
const drawn = (): ((bytes: number) => Uint8Array) => {
  let n = 0
  return (bytes) => {
    const parts: Buffer[] = []
    for (let have = 0; have < bytes; have += 32) {
      n += 1
      parts.push(createHash('sha256').update(`browser ${n}`).digest())
    }
    return new Uint8Array(Buffer.concat(parts).subarray(0, bytes))
  }
}

/** A studio of its own: real socket, temporary database and photos, a clock that stands still. */
export const openStudio = async (): Promise<Studio> => {
  const folder = mkdtempSync(join(tmpdir(), 'jambside-browser-'))
  await buildAssets(folder)
  const { assets, manifest } = openAssets(join(folder, 'assets'))
  const db = await openFileDb(join(folder, 'studio.db'))
  const clock = { now: NOON_BEFORE }
  await migrate(db, clock.now)
  const random = drawn()
  const faults: unknown[] = []
  const shared = { read: db.read, write: db.write, close: async () => {} }
  const app = createApp(
    {
      config: parseConfig({}),
      openDb: () => shared,
      photos: openPhotoFolder(join(folder, 'photos')),
      now: () => clock.now,
      random,
      log: () => {},
      fault: (_id, error) => faults.push(error),
      manifest,
    },
    assets,
  )
  let held: Promise<void> | null = null
  const answer = nodeFetch(app)
  const server = createAdaptorServer({
    fetch: async (...request: Parameters<typeof answer>) => {
      await held
      return answer(...request)
    },
  })
  const listen = (at: number) =>
    new Promise<void>((done) => {
      server.listen(at, '127.0.0.1', done)
    })
  await listen(0)
  const { port } = server.address() as AddressInfo
  const origin = `http://127.0.0.1:${port}`
  const stop = () =>
    new Promise<void>((done) => {
      server.close(() => done())
      ;(server as { closeAllConnections?: () => void }).closeAllConnections?.()
    })
  return {
    origin,
    clock,
    faults,
    signInLink: async (rights) => {
      const code = newKey(random)
      await db.write([insertAccess(signInRow(await sha256(code), rights, 'test', clock.now))])
      return `${origin}/in/${code}`
    },
    stop,
    start: () => listen(port),
    hang: () => {
      let release = () => {}
      held = new Promise((done) => {
        release = done
      })
      return () => {
        held = null
        release()
      }
    },
    close: async () => {
      await stop()
      await db.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
