import { createClient } from '@libsql/client/http'
import { fromDriver, toDriver } from './bind'
import type { Db, Rows, Stmt } from './db'
import { isDbError } from './db-error'
import { mapError, WireFault } from './map-error'

export type HttpDbOptions = {
  readonly url: string
  readonly authToken?: string
  /** How long one round trip may take, ms. */
  readonly timeoutMs?: number
  readonly fetch?: (request: Request) => Promise<Response>
}

/**
 * A remote libSQL database over HTTP. On the edge open one per request: the driver's inner queue
 * may not be shared between requests. Opening does no I/O; each call is one POST.
 */
export const openHttpDb = (options: HttpDbOptions): Db => {
  const { url, authToken, timeoutMs = 3000 } = options
  const send = options.fetch ?? ((request: Request) => fetch(request))
  const client = createClient({
    url,
    intMode: 'number',
    fetch: (request: Request) => fetchWhole(send, request, timeoutMs),
    ...(authToken === undefined ? {} : { authToken }),
  })
  const batch = async (stmts: readonly Stmt[], mode: 'read' | 'write'): Promise<Rows> => {
    try {
      return fromDriver(await client.batch(toDriver(stmts), mode))
    } catch (error) {
      throw mapError(error)
    }
  }
  return {
    read: (stmts) => twice(() => batch(stmts, 'read')),
    write: (stmts, { retry = false } = {}) =>
      retry ? twice(() => batch(stmts, 'write')) : batch(stmts, 'write'),
    close: async () => client.close(),
  }
}

// The body is read here, so that the time limit covers it and a cut answer is known for what it is.
const fetchWhole = async (
  send: (request: Request) => Promise<Response>,
  request: Request,
  timeoutMs: number,
): Promise<Response> => {
  try {
    const response = await send(new Request(request, { signal: AbortSignal.timeout(timeoutMs) }))
    const body = await response.arrayBuffer()
    return new Response(body, { status: response.status, headers: response.headers })
  } catch (error) {
    throw new WireFault(error)
  }
}

const twice = async <T>(work: () => Promise<T>): Promise<T> => {
  try {
    return await work()
  } catch (error) {
    if (isDbError(error, 'unavailable')) return work()
    throw error
  }
}
