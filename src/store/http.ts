import { createClient } from '@libsql/client/http'
import { checkReads, fromDriver, toDriver } from './bind'
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
      if (mode === 'read') checkReads(stmts)
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
  const { status, headers, body } = await receive(send, request, timeoutMs)
  const refused = status === 401 || status === 403 || status === 429 || status >= 500
  if (refused) {
    const said = new TextDecoder().decode(body.slice(0, 200))
    throw new WireFault(`the database answered ${status}: ${said}`, { busy: status === 429 })
  }
  return new Response(body, { status, headers })
}

const receive = async (
  send: (request: Request) => Promise<Response>,
  request: Request,
  timeoutMs: number,
) => {
  try {
    const response = await send(new Request(request, { signal: AbortSignal.timeout(timeoutMs) }))
    const { status, headers } = response
    return { status, headers, body: await response.arrayBuffer() }
  } catch (cause) {
    throw new WireFault(`the database did not answer: ${String(cause)}`, { cause })
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
