import { randomBytes } from 'node:crypto'
import { createApp } from '../../../src/app'
import { parseConfig } from '../../../src/config'
import type { Db } from '../../../src/store/db'

export const OWNER_KEY = 'owner-key-of-the-bench-owner-key-of-the-bench-00'

const manifest = { 'docket.css': 'docket.css', 'enhance.js': 'enhance.js', 'bench.js': 'bench.js' }

/** The program as `npm start` makes it, over a database that stays open, saying nothing. */
export const appOn = (db: Db) =>
  createApp({
    config: parseConfig({ OWNER_KEY, TRUST_PROXY: '1' }),
    openDb: () => ({ read: db.read, write: db.write, close: async () => {} }),
    photos: { get: async () => null, put: async () => {}, delete: async () => {} } as never,
    now: () => Date.now(),
    random: (bytes) => new Uint8Array(randomBytes(bytes)),
    log: () => {},
    fault: (id, error) => console.error(id, error),
    manifest,
  })
