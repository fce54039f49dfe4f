import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { Miniflare } from 'miniflare'
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest'
import type { HranaServer } from '../../dev/hrana'
import { upsertHead } from '../../src/store/heads'
import { migrate } from '../../src/store/migrate'
import { aHead } from './rows'
import { makeHttpStore } from './stores'

let miniflare: Miniflare
let server: HranaServer
let dispose: () => Promise<void>

beforeAll(async () => {
  const store = await makeHttpStore()
  ;({ server, dispose } = store)
  await migrate(store.db, 1)
  await store.db.write([upsertHead(aHead('d1'))])
  const { outputFiles } = await build({
    stdin: {
      contents: `export { fetchHandler as default } from './workerd-probe'`,
      resolveDir: fileURLToPath(new URL('.', import.meta.url)),
    },
    bundle: true,
    write: false,
    format: 'esm',
    conditions: ['workerd', 'worker', 'browser'],
  })
  miniflare = new Miniflare({
    modules: true,
    script: outputFiles[0]?.text ?? '',
    compatibilityDate: '2026-04-01',
    bindings: { LIBSQL_URL: server.url, LIBSQL_AUTH_TOKEN: 'test-token' },
  })
})
beforeEach(() => server.reset())
afterAll(async () => {
  await miniflare.dispose()
  await dispose()
})

const ask = async (query = '', method = 'GET') => {
  const answer = await miniflare.dispatchFetch(`http://probe/${query}`, { method })
  return answer.status === 200 ? await answer.json() : answer.status
}

it('in a Worker: lines are written and read, and a stale writer is told so', async () => {
  expect(await ask('?rev=0&id=a', 'POST')).toEqual({ ok: true })
  expect(await ask('?rev=0&id=b', 'POST')).toEqual({
    code: 'conflict',
    statementIndex: 0,
    constraint: 'line.docket, line.seq',
  })
  expect(await ask()).toEqual({ lines: 1 })
  expect(server.counts()).toMatchObject({ pipelines: 3, batches: 3, executes: 0 })
})

it('in a Worker: many requests at once are all answered, each by one round trip', async () => {
  const answers = await Promise.all(Array.from({ length: 60 }, () => ask()))
  expect(answers).toEqual(answers.map(() => ({ lines: 1 })))
  expect(server.counts().pipelines).toBe(60)
})

it('in a Worker: faults of the line have the same names as elsewhere', async () => {
  for (const kind of ['drop-before', 'drop-after', 'half-body', 'not-json'] as const) {
    server.faults.next(1, { kind })
    expect(await ask(), kind).toEqual({ lines: 1 })
    server.faults.next(2, { kind })
    expect(await ask(), kind).toMatchObject({ code: 'unavailable' })
  }
  server.faults.next(1, { kind: 'status', status: 429 })
  expect(await ask()).toMatchObject({ code: 'busy' })
  server.faults.always({ kind: 'delay', ms: 60_000 })
  expect(await ask('?timeout=30')).toMatchObject({ code: 'unavailable' })
})
