import manifest from '../dist/assets/manifest.json' with { type: 'json' }
import { createApp, type Outer } from './app'
import { parseConfig } from './config'
import { tend } from './routes/acts/upkeep'
import type { Deps } from './routes/deps'
import { createGate, EDGE_GATE } from './routes/http/gate'
import { base64url } from './routes/http/keys'
import { dispatch } from './routes/outgoing/dispatch'
import { openHttpDb } from './store/http'
import { openPhotoBucket } from './store/photo-r2'
import { workerPost } from './worker-post'

type Env = Readonly<Record<string, unknown>> & { readonly PHOTOS?: unknown }

const random = (bytes: number): Uint8Array => crypto.getRandomValues(new Uint8Array(bytes))

const depsOf = (env: Env): Deps => {
  const config = parseConfig(env)
  const url = config.libsqlUrl
  if (url === null) throw new Error('LIBSQL_URL is not set')
  const authToken = config.libsqlToken
  return {
    config,
    // One client for one request: its inner queue may not be shared between requests.
    openDb: () => openHttpDb({ url, ...(authToken ? { authToken } : {}) }),
    photos: openPhotoBucket(env.PHOTOS as never),
    gate,
    now: () => Date.now(),
    random,
    log: (record) => console.log(JSON.stringify(record)),
    fault: (requestId, error) =>
      console.error(
        requestId,
        error instanceof Error ? `${error.name}: ${error.message}` : 'fault',
      ),
    manifest,
  }
}

const gate = createGate(EDGE_GATE)

/** The trigger of wrangler.toml that sends what is due; the other one tidies up. */
const SENDING = '* * * * *'

const send = async (env: Env): Promise<void> => {
  const { openDb, now } = depsOf(env)
  const db = openDb()
  try {
    await dispatch({ db, now, random, post: workerPost })
  } finally {
    await db.close()
  }
}

let app: ReturnType<typeof createApp> | undefined

export default {
  fetch: (request: Request, env: Env): Response | Promise<Response> => {
    app ??= createApp(depsOf(env))
    const outer: Outer = { remote: request.headers.get('cf-connecting-ip') }
    return app.fetch(request, outer)
  },
  scheduled: (
    event: { readonly cron: string },
    env: Env,
    context: { readonly waitUntil: (work: Promise<unknown>) => void },
  ): void => {
    const sends = event.cron === SENDING
    context.waitUntil(sends ? send(env) : tend(depsOf(env), base64url(random(9))))
  },
}
