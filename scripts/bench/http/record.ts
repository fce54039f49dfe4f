import type { Db, Stmt } from '../../../src/store/db'
import { openFileDb } from '../../../src/store/file'
import { appOn } from './app-on'
import type { Request, Route } from './traffic'

/** One request as it went: what was asked of the database, and what was sent back. */
export type Recorded = {
  readonly reads: readonly Stmt[]
  readonly writes: readonly Stmt[]
  readonly trips: number
  readonly status: number
  readonly headers: readonly (readonly [string, string])[]
  readonly body: string
}

/** Sends every request once, in order, over the given file, and keeps what went over both wires. */
export const record = async (
  file: string,
  routes: readonly Route[],
): Promise<Readonly<Record<string, readonly Recorded[]>>> => {
  const db = await openFileDb(file)
  let reads: Stmt[] = []
  let writes: Stmt[] = []
  let trips = 0
  const watched: Db = {
    ...db,
    read: (stmts) => {
      reads.push(...stmts)
      trips += 1
      return db.read(stmts)
    },
    write: (stmts, options) => {
      writes.push(...stmts)
      trips += 1
      return db.write(stmts, options)
    },
  }
  const app = appOn(watched)
  let calls = 0
  const one = async ({ method, path, headers, body }: Request): Promise<Recorded> => {
    reads = []
    writes = []
    trips = 0
    const answer = await app.request(`http://127.0.0.1${path}`, {
      method,
      headers: { ...headers, 'x-forwarded-for': `10.1.${calls % 250}.${calls++ % 200}` },
      ...(body === undefined ? {} : { body }),
    })
    const text = await answer.text()
    if (answer.status >= 400) throw new Error(`${method} ${path}: ${answer.status} ${text}`)
    return { reads, writes, trips, status: answer.status, headers: [...answer.headers], body: text }
  }
  const all: Record<string, Recorded[]> = {}
  for (const route of routes) {
    const kept: Recorded[] = []
    for (const request of route.requests) kept.push(await one(request))
    all[route.id] = kept
  }
  await db.close()
  return all
}
