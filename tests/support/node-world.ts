import { createHash } from 'node:crypto'
import { once } from 'node:events'
import { copyFileSync, cpSync, existsSync, mkdtempSync, rmSync } from 'node:fs'
import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { serve } from '@hono/node-server'
import { startHrana } from '../../dev/hrana'
import { createApp } from '../../src/app'
import { parseConfig } from '../../src/config'
import { nodeFetch, SERVER_LIMITS } from '../../src/node-fetch'
import { tend } from '../../src/routes/acts/upkeep'
import type { Deps } from '../../src/routes/deps'
import { createGate } from '../../src/routes/http/gate'
import type { Db } from '../../src/store/db'
import { openFileDb } from '../../src/store/file'
import { openHttpDb } from '../../src/store/http'
import { openPhotoFolder } from '../../src/store/photo-folder'
import { copyBase } from './base-db'
import { countingDb } from './counting-db'
import { OWNER_KEY, type World, type WorldOptions } from './world'

/** 2026-03-02, a Monday, at 09:00 UTC. */
const BEGIN = Date.UTC(2026, 2, 2, 9)

/** The same bytes in every run: a counter hashed. */
const drawn = (seed: string) => {
  let n = 0
  return (bytes: number): Uint8Array => {
    const all: Buffer[] = []
    for (let have = 0; have < bytes; have += 32) {
      n += 1
      all.push(createHash('sha256').update(`${seed} ${n}`).digest())
    }
    return new Uint8Array(Buffer.concat(all).subarray(0, bytes))
  }
}

/** No browser file is built here: the names stand for themselves. */
const manifest = {
  'docket.css': 'docket.css',
  'enhance.js': 'enhance.js',
  'bench.js': 'bench.js',
  'leave.js': 'leave.js',
  'bench-worker.js': 'bench-worker.js',
}

/** The program as on one machine, over a real socket, with a clock moved by hand. */
export const openNodeWorld = async (options: WorldOptions): Promise<World> => {
  const folder = mkdtempSync(join(tmpdir(), 'jambside-node-'))
  const file = join(folder, 'jambside.db')
  const photos = join(folder, 'photos')
  if (options.from === undefined) await copyBase(file)
  else {
    copyFileSync(options.from.file, file)
    if (existsSync(options.from.photos)) cpSync(options.from.photos, photos, { recursive: true })
  }
  const hrana = options.http ? await startHrana({ file }) : undefined
  const kept: Db | undefined = hrana ? undefined : await openFileDb(file)
  const counts = { reads: 0, writes: 0 }
  const open = (): Db => {
    const db = kept ? { ...kept, close: async () => {} } : openHttpDb({ url: hrana?.url ?? '' })
    return countingDb(db, counts)
  }
  const clock = { now: BEGIN }
  const logs: string[] = []
  const deps: Deps = {
    config: parseConfig({
      OWNER_KEY,
      TRUST_PROXY: options.trustProxy ? '1' : '0',
      ...(options.publicUrl ? { PUBLIC_URL: options.publicUrl } : {}),
    }),
    openDb: open,
    photos: openPhotoFolder(photos),
    ...(options.gate ? { gate: createGate(options.gate) } : {}),
    now: () => clock.now,
    random: drawn(options.seed ?? 'world'),
    log: (record) => logs.push(JSON.stringify(record)),
    fault: (id, error) => logs.push(`${id} ${error instanceof Error ? error.stack : error}`),
    manifest,
  }
  const app = createApp(deps)
  const server = serve({
    hostname: '127.0.0.1',
    port: 0,
    fetch: nodeFetch(app),
    serverOptions: { ...SERVER_LIMITS, ...options.server },
  }) as Server
  if (!server.listening) await once(server, 'listening')
  const baseUrl = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
  return {
    runtime: 'node',
    baseUrl,
    ownerKey: OWNER_KEY,
    fetch: (path, init = {}) => fetch(`${baseUrl}${path}`, { redirect: 'manual', ...init }),
    logs: () => logs,
    file,
    photos,
    trips: () => ({ ...counts }),
    resetTrips: () => Object.assign(counts, { reads: 0, writes: 0 }),
    clock,
    ...(hrana ? { hrana } : {}),
    tend: () => tend(deps, 'tended'),
    close: async () => {
      const closed = once(server, 'close')
      server.close()
      server.closeAllConnections()
      await closed
      await kept?.close()
      await hrana?.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
