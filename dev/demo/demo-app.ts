import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { createApp } from '../../src/app'
import { parseConfig } from '../../src/config'
import { base64url } from '../../src/routes/http/keys'
import { dataPaths } from '../../src/store/data-dir'
import { openFileDb } from '../../src/store/file'
import { takeLock } from '../../src/store/lock'
import { migrate } from '../../src/store/migrate'
import { openPhotoFolder } from '../../src/store/photo-folder'
import { drawn } from './drawn'

export type Sent = {
  /** Bearer key; absent: nobody. */
  readonly key?: string
  readonly body?: unknown
  readonly form?: FormData | URLSearchParams
  readonly match?: number
}

export type DemoApp = {
  readonly clock: { now: number }
  readonly ownerKey: string
  /** One request to the app; throws with the whole answer when it is not a success. */
  readonly send: (method: string, path: string, sent?: Sent) => Promise<Record<string, unknown>>
  readonly close: () => Promise<void>
}

/** The whole program over a data folder, with a clock that is moved by hand and no network. */
export const openDemoApp = async (
  folder: string,
  origin: string,
  now: number,
): Promise<DemoApp> => {
  mkdirSync(folder, { recursive: true })
  const paths = dataPaths(folder)
  const lock = takeLock(paths.lock)
  const db = await openFileDb(paths.database)
  await migrate(db, now)
  const clock = { now }
  const random = drawn('demo')
  const ownerKey = base64url(random(32))
  const faults: unknown[] = []
  const app = createApp({
    config: parseConfig({ OWNER_KEY: ownerKey, PUBLIC_URL: origin, DATA_DIR: folder }),
    openDb: () => ({ read: db.read, write: db.write, close: async () => {} }),
    photos: openPhotoFolder(join(folder, 'photos')),
    now: () => clock.now,
    random,
    log: () => {},
    fault: (_id, error) => faults.push(error),
    manifest: {},
  })
  return {
    clock,
    ownerKey,
    send: async (method, path, sent = {}) => {
      // Every request a second later: lines stand in the order they were made.
      clock.now += 1000
      const headers = new Headers()
      if (sent.key) headers.set('authorization', `Bearer ${sent.key}`)
      if (sent.match !== undefined) headers.set('if-match', `"${sent.match}"`)
      if (sent.body !== undefined) headers.set('content-type', 'application/json')
      const body = sent.form ?? (sent.body === undefined ? null : JSON.stringify(sent.body))
      const response = await app.fetch(
        new Request(`${origin}${path}`, { method, headers, ...(body === null ? {} : { body }) }),
      )
      const text = await response.text()
      if (response.status >= 400)
        throw new Error(`${method} ${path} answered ${response.status}: ${text.slice(0, 2000)}`, {
          cause: faults.at(-1),
        })
      return text.startsWith('{') ? (JSON.parse(text) as Record<string, unknown>) : {}
    },
    close: async () => {
      await db.close()
      lock.release()
    },
  }
}
