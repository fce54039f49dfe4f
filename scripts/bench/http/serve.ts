import { readFileSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { serve } from '@hono/node-server'
import { createClient } from '@libsql/client/sqlite3'
import { nodeFetch } from '../../../src/node-fetch'
import { openFileDb } from '../../../src/store/file'
import { report } from '../bundled'
import { appOn } from './app-on'
import { bareApp } from './bare-app'

/** A server in a process of its own: `ours <database>` or `bare <database> <recorded traffic>`. */
const [, , which = '', file = '', traffic = ''] = process.argv

const oursOn = async () => nodeFetch(appOn(await openFileDb(file)))

const bareOn = async () => {
  const client = createClient({ url: `file:${file}`, concurrency: 1, intMode: 'number' })
  // As durable as ours: the same log, the same sync.
  await client.execute('PRAGMA journal_mode = WAL')
  await client.execute('PRAGMA secure_delete = ON')
  let turn: Promise<unknown> = Promise.resolve()
  // One transaction at a time, which the driver's one connection needs.
  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const now = turn.then(work)
    turn = now.catch(() => {})
    return now
  }
  const queued = {
    batch: (...args: Parameters<typeof client.batch>) => inTurn(() => client.batch(...args)),
  }
  const app = bareApp(JSON.parse(readFileSync(traffic, 'utf8')), () => ({
    client: queued as typeof client,
    done: () => {},
  }))
  return app.fetch
}

const fetch = which === 'ours' ? await oursOn() : await bareOn()
serve({ hostname: '127.0.0.1', port: 0, fetch: fetch as never }, (info: AddressInfo) =>
  report({ port: info.port }),
)
process.on('disconnect', () => process.exit(0))
