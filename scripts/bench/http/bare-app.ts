import type { Client } from '@libsql/client'
import { Hono } from 'hono'
import type { Replay } from './replayed'

/** Names of the headers that say which recorded request is meant. */
export const WHICH = 'x-bench-route'
export const NTH = 'x-bench-n'

type Open = () => { readonly client: Client; readonly done: () => void }

/**
 * The least a server could do: no rights, no rules, no page. It runs the recorded statements of the
 * request with the plain driver, reads in one batch and writes in one, and sends the recorded bytes.
 */
export const bareApp = (replay: Replay, open: Open) => {
  const app = new Hono()
  app.all('*', async (c) => {
    const route = replay.routes[c.req.header(WHICH) ?? '']
    const found = route?.requests[Number(c.req.header(NTH))]
    if (route === undefined || found === undefined) return c.text('not recorded', 404)
    if (c.req.method !== 'GET') await c.req.text()
    const { client, done } = open()
    const batch = (steps: typeof found.reads) =>
      steps.map(([sql, args]) => ({ sql: replay.sql[sql] ?? '', args: [...args] }))
    if (found.reads.length > 0) await client.batch(batch(found.reads), 'read')
    if (found.writes.length > 0) await client.batch(batch(found.writes), 'write')
    done()
    return new Response(route.body, {
      status: route.status,
      headers: route.headers.map(([k, v]): [string, string] => [k, v]),
    })
  })
  return app
}
