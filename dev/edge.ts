import { randomBytes } from 'node:crypto'
import { mkdirSync } from 'node:fs'
import { rm } from 'node:fs/promises'
import { join, resolve } from 'node:path'
import { Miniflare } from 'miniflare'
import { buildWorker } from '../scripts/build-worker'
import { signInRow } from '../src/routes/acts/sign-in'
import { newKey, sha256 } from '../src/routes/http/keys'
import { insertAccess } from '../src/store/accesses'
import { openHttpDb } from '../src/store/http'
import { migrate } from '../src/store/migrate'
import { startHrana } from './hrana'
import { workerOptions } from './worker-options'

const random = (bytes: number): Uint8Array => new Uint8Array(randomBytes(bytes))

/** Brings the schema up to date and puts a one-use sign-in code beside it; gives the code. */
const prepare = async (url: string): Promise<string> => {
  const db = openHttpDb({ url })
  const applied = await migrate(db, Date.now())
  if (applied.length > 0) console.log(`schema: applied migration ${applied.join(', ')}`)
  const code = newKey(random)
  const row = signInRow(await sha256(code), 'owner', 'local edge', Date.now())
  await db.write([insertAccess(row)])
  await db.close()
  return code
}

/** The built Worker in the edge's own runtime on this machine, its database and pictures under data/. */
const main = async (): Promise<void> => {
  const folder = resolve(process.env.DATA_DIR ?? 'data', 'edge')
  mkdirSync(folder, { recursive: true })
  const hrana = await startHrana({ file: join(folder, 'edge.db') })
  const code = await prepare(hrana.url)
  const built = await buildWorker()
  const edge = new Miniflare({
    ...workerOptions(built, { LIBSQL_URL: hrana.url }),
    host: '127.0.0.1',
    port: Number(process.env.PORT ?? 8788),
    r2Persist: join(folder, 'photos'),
  })
  const origin = (await edge.ready).origin
  console.log(`Jambside on the local edge is open at ${origin}`)
  console.log(`Sign in on this device within ten minutes: ${origin}/in/${code}`)
  const stop = async (): Promise<void> => {
    await edge.dispose()
    await hrana.close()
    await rm(built.folder, { recursive: true, force: true })
    process.exit(0)
  }
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => void stop())
}

main().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error)
  process.exit(1)
})
