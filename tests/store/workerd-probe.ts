import { readAll } from '../../src/store/db'
import { isDbError } from '../../src/store/db-error'
import { openHttpDb } from '../../src/store/http'
import { insertLines, selectLines } from '../../src/store/lines'
import { aLine } from './rows'

type Env = { readonly LIBSQL_URL: string; readonly LIBSQL_AUTH_TOKEN: string }

/** A Worker of a few lines around the HTTP adapter: POST appends a line, GET counts them. */
const answer = async (request: Request, env: Env): Promise<object> => {
  const { searchParams } = new URL(request.url)
  const timeoutMs = Number(searchParams.get('timeout') ?? 3000)
  const db = openHttpDb({ url: env.LIBSQL_URL, authToken: env.LIBSQL_AUTH_TOKEN, timeoutMs })
  try {
    if (request.method === 'POST') {
      const rev = Number(searchParams.get('rev'))
      await db.write([insertLines('d1', rev, [aLine(searchParams.get('id') ?? '')])])
      return { ok: true }
    }
    const [lines] = await readAll(db, [selectLines('d1')])
    return { lines: lines.length }
  } catch (error) {
    if (!isDbError(error)) throw error
    const { code, statementIndex, constraint } = error
    return { code, statementIndex, constraint }
  }
}

export const fetchHandler = {
  fetch: async (request: Request, env: Env) => Response.json(await answer(request, env)),
}
