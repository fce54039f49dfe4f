import { createClient } from '@libsql/client/http'
import type { Hono } from 'hono'
import { traffic } from 'recorded-traffic'
import { bareApp } from './bare-app'

type Env = { readonly LIBSQL_URL: string }

let app: Hono | undefined

/** The bare server on the edge's runtime: a client for one request, as there it must be. */
const bare = {
  fetch: (request: Request, env: Env) => {
    app ??= bareApp(traffic, () => {
      const client = createClient({ url: env.LIBSQL_URL, intMode: 'number' })
      return { client, done: () => client.close() }
    })
    return app.fetch(request)
  },
}

export { bare as default }
