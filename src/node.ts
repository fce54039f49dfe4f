import { randomBytes } from 'node:crypto'
import { mkdirSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { serve } from '@hono/node-server'
import { createApp } from './app'
import { parseConfig } from './config'
import { openAssets } from './node-assets'
import { nodeFetch, SERVER_LIMITS } from './node-fetch'
import { nodePost } from './node-post'
import { signInRow } from './routes/acts/sign-in'
import { tend } from './routes/acts/upkeep'
import type { Deps } from './routes/deps'
import { createGate, MACHINE_GATE } from './routes/http/gate'
import { base64url, newKey, sha256 } from './routes/http/keys'
import { dispatch } from './routes/outgoing/dispatch'
import { insertAccess, selectAccesses } from './store/accesses'
import { dataPaths } from './store/data-dir'
import { type Db, readAll } from './store/db'
import { openFileDb } from './store/file'
import { openHttpDb } from './store/http'
import { takeLock } from './store/lock'
import { migrate } from './store/migrate'
import { openPhotoFolder } from './store/photo-folder'

const random = (bytes: number): Uint8Array => new Uint8Array(randomBytes(bytes))

/** How often the server looks whether something has been kept long enough. */
const TEND_MS = 3_600_000

const openStore = async (config: ReturnType<typeof parseConfig>): Promise<Db> => {
  if (config.libsqlUrl !== null && !config.libsqlUrl.startsWith('file:')) {
    const authToken = config.libsqlToken
    return openHttpDb({ url: config.libsqlUrl, ...(authToken ? { authToken } : {}) })
  }
  const path = config.libsqlUrl?.replace(/^file:/, '') ?? dataPaths(config.dataDir).database
  return openFileDb(path)
}

/** A first owner gets a sign-in link; later ones come from a signed-in device or `npm run signin`. */
const firstLink = async (db: Db, origin: string): Promise<string | null> => {
  const [known] = await readAll(db, [selectAccesses(['owner'])])
  if (known.length > 0) return null
  const code = newKey(random)
  await db.write([insertAccess(signInRow(await sha256(code), 'owner', 'first device', Date.now()))])
  return `${origin}/in/${code}`
}

/** How often messages that are due are looked for. */
const SEND_MS = 5_000

/** Rounds one after another; one that fails is tried again with the next. */
const everySoOften = (round: () => Promise<unknown>): ReturnType<typeof setInterval> => {
  let running = false
  return setInterval(() => {
    if (running) return
    running = true
    round()
      .catch((error: unknown) => console.error('outgoing', error))
      .finally(() => {
        running = false
      })
  }, SEND_MS)
}

const main = async (): Promise<void> => {
  const config = parseConfig(process.env)
  mkdirSync(config.dataDir, { recursive: true })
  const paths = dataPaths(config.dataDir)
  const lock = takeLock(paths.lock)
  const db = await openStore(config)
  const applied = await migrate(db, Date.now())
  if (applied.length > 0) console.log(`schema: applied migration ${applied.join(', ')}`)
  const shared: Db = {
    read: db.read,
    write: db.write,
    ...(db.scrub ? { scrub: db.scrub } : {}),
    close: async () => {},
  }
  const { assets, manifest } = openAssets()
  const deps: Deps = {
    config,
    openDb: () => shared,
    photos: openPhotoFolder(paths.photos),
    gate: createGate(MACHINE_GATE),
    now: () => Date.now(),
    random,
    log: (record) => console.log(JSON.stringify(record)),
    fault: (requestId, error) => console.error(requestId, error),
    manifest,
  }
  const app = createApp(deps, assets)
  const look = (): Promise<void> => tend(deps, base64url(random(9)))
  const tending = setInterval(look, TEND_MS)
  const sending = everySoOften(() => dispatch({ db, now: deps.now, random, post: nodePost }))
  await look()
  const server = serve(
    {
      hostname: config.host,
      port: config.port,
      fetch: nodeFetch(app),
      serverOptions: SERVER_LIMITS,
    },
    async (info: AddressInfo) => {
      const host = info.family === 'IPv6' ? `[${info.address}]` : info.address
      const origin = config.publicOrigin ?? `http://${host}:${info.port}`
      console.log(`Jambside is open at ${origin}`)
      const link = await firstLink(db, origin)
      if (link) console.log(`Sign in on this device within ten minutes: ${link}`)
      else console.log('Sign in on a further device: npm run signin')
    },
  )
  const stop = (): void => {
    clearInterval(tending)
    clearInterval(sending)
    server.close(async () => {
      await db.close()
      lock.release()
      process.exit(0)
    })
    ;(server as { closeIdleConnections?: () => void }).closeIdleConnections?.()
  }
  process.on('SIGINT', stop)
  process.on('SIGTERM', stop)
}

main().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error)
  process.exit(1)
})
