import { randomBytes } from 'node:crypto'
import { existsSync } from 'node:fs'
import { parseConfig } from '../src/config'
import { signInRow } from '../src/routes/acts/sign-in'
import { newKey, sha256 } from '../src/routes/http/keys'
import { insertAccess } from '../src/store/accesses'
import { dataPaths } from '../src/store/data-dir'
import type { Db } from '../src/store/db'
import { openFileDb } from '../src/store/file'
import { openHttpDb } from '../src/store/http'
import { runScript } from './run-script'

/**
 * Puts a one-use sign-in link for an owner into the database and gives its address; it holds ten
 * minutes from `now`. Works beside a running server: it takes no lock, and the write-ahead log lets
 * both write.
 */
export const signInLink = async (
  db: Pick<Db, 'write'>,
  origin: string,
  now: number,
  random: (bytes: number) => Uint8Array,
): Promise<string> => {
  const code = newKey(random)
  await db.write([insertAccess(signInRow(await sha256(code), 'owner', 'owner', now))])
  return `${origin}/in/${code}`
}

type Config = ReturnType<typeof parseConfig>

const open = async (config: Config, remote: boolean): Promise<Db> => {
  const url = config.libsqlUrl
  if (url !== null && !url.startsWith('file:')) {
    const authToken = config.libsqlToken
    return openHttpDb({ url, ...(authToken ? { authToken } : {}) })
  }
  if (remote) throw new Error('--remote needs LIBSQL_URL (and LIBSQL_AUTH_TOKEN)')
  const path = url?.replace(/^file:/, '') ?? dataPaths(config.dataDir).database
  // The driver would make an empty database where there is none.
  if (!existsSync(path)) throw new Error(`${path} is not there yet: start the server once`)
  return openFileDb(path)
}

runScript(import.meta.url, async () => {
  const config = parseConfig(process.env)
  const remote = process.argv.includes('--remote')
  if (remote && config.publicOrigin === null)
    throw new Error('--remote needs PUBLIC_URL, the address the studio is reached at')
  const db = await open(config, remote)
  const origin = config.publicOrigin ?? `http://${config.host}:${config.port}`
  const random = (bytes: number): Uint8Array => new Uint8Array(randomBytes(bytes))
  try {
    const link = await signInLink(db, origin, Date.now(), random)
    console.log(`Sign in on this device within ten minutes, once: ${link}`)
  } finally {
    await db.close()
  }
})
