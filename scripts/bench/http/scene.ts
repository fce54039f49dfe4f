import { once } from 'node:events'
import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { serve } from '@hono/node-server'
import Database from 'libsql'
import { nodeFetch } from '../../../src/node-fetch'
import { openFileDb } from '../../../src/store/file'
import { copyBase } from '../../../tests/support/base-db'
import { appOn, OWNER_KEY } from './app-on'
import { prepare } from './prepare'
import { record } from './record'
import { type Replay, replayOf } from './replayed'
import { type Route, SUBMISSIONS, trafficOf } from './traffic'

/** Everything both servers need: a database to begin with, the requests, and how they went once. */
export type Scene = {
  readonly routes: readonly Route[]
  readonly replay: Replay
  readonly trafficFile: string
  /** Most round trips to the database one request of a route took. */
  readonly trips: Readonly<Record<string, number>>
  /** A fresh copy of the database. */
  readonly copy: (name: string) => string
  readonly remove: () => void
}

const whole = (from: string, to: string): void => {
  const raw = new Database(from)
  raw.exec(`VACUUM INTO '${to}'`)
  raw.close()
}

/** Makes the dockets through the contract, then lets the traffic go by once and records it. */
export const makeScene = async (perRoute: number): Promise<Scene> => {
  const folder = mkdtempSync(join(tmpdir(), 'bench-http-'))
  const file = join(folder, 'made.db')
  await copyBase(file)
  const db = await openFileDb(file)
  const server = serve({ hostname: '127.0.0.1', port: 0, fetch: nodeFetch(appOn(db)) }) as Server
  if (!server.listening) await once(server, 'listening')
  const base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
  const prepared = await prepare(base, OWNER_KEY, SUBMISSIONS).finally(async () => {
    server.close()
    server.closeAllConnections()
    await db.close()
  })
  const seed = join(folder, 'seed.db')
  whole(file, seed)
  const copy = (name: string): string => {
    const to = join(folder, `${name}.db`)
    copyFileSync(seed, to)
    return to
  }
  const routes = trafficOf(prepared, OWNER_KEY, perRoute)
  const recorded = await record(copy('recorded'), routes)
  const replay = replayOf(recorded)
  const trafficFile = join(folder, 'traffic.json')
  writeFileSync(trafficFile, JSON.stringify(replay))
  const trips = Object.fromEntries(
    Object.entries(recorded).map(([id, list]) => [id, Math.max(...list.map((r) => r.trips))]),
  )
  return {
    routes,
    replay,
    trafficFile,
    trips,
    copy,
    remove: () => rmSync(folder, { recursive: true, force: true }),
  }
}
