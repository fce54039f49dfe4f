import { openHttpDb } from '../src/store/http'
import { migrate } from '../src/store/migrate'
import { runScript } from './run-script'

/**
 * Brings the remote database named by LIBSQL_URL and LIBSQL_AUTH_TOKEN to this program's schema.
 * The file of a single machine is migrated by the server itself when it starts.
 */
const main = async (env: NodeJS.ProcessEnv): Promise<void> => {
  const url = env.LIBSQL_URL
  if (!url) throw new Error('set LIBSQL_URL (and LIBSQL_AUTH_TOKEN) to the remote database')
  const authToken = env.LIBSQL_AUTH_TOKEN
  const db = openHttpDb({ url, timeoutMs: 30_000, ...(authToken ? { authToken } : {}) })
  const applied = await migrate(db, Date.now())
  await db.close()
  console.log(applied.length === 0 ? 'nothing to do' : `applied ${applied.join(', ')}`)
}

runScript(import.meta.url, () => main(process.env))
