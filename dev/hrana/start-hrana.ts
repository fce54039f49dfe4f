import { once } from 'node:events'
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import Database from 'libsql'
import { createConnections } from './connections'
import { createFaults, type Fault, type FaultSwitches } from './faults'
import { type Counts, createPipelines } from './pipelines'
import { HranaFault, type PipelineRequest } from './protocol'
import { createWriteLock } from './write-lock'

export type HranaOptions = {
  readonly file: string
  /** When set, requests must carry it as a bearer token. */
  readonly token?: string
  /** How long a transaction may stay open, and an idle stream live, ms. */
  readonly txTimeoutMs?: number
  readonly idleMs?: number
  readonly port?: number
}

export type HranaServer = {
  readonly url: string
  readonly faults: FaultSwitches
  /** What arrived since the last `reset`. */
  counts(): Readonly<Counts>
  /** Counters to zero, faults off. */
  reset(): void
  close(): Promise<void>
}

const zero = (): Counts => ({
  pipelines: 0,
  batches: 0,
  writes: 0,
  executes: 0,
  statements: 0,
})

/**
 * A libSQL endpoint (Hrana 2, JSON over HTTP) on a local file, for tests and the local edge: it
 * listens on 127.0.0.1 only, at a port the system picks. Not a copy of a real server: it has its
 * wire format, error codes and time limits, not its replication or quotas.
 */
export const startHrana = async (options: HranaOptions): Promise<HranaServer> => {
  const { file, token, txTimeoutMs = 5000, idleMs = 10_000, port = 0 } = options
  useWriteAheadLog(file)
  const counts = zero()
  const faults = createFaults()
  const parts = { connections: createConnections(file), lock: createWriteLock() }
  const pipelines = createPipelines({ ...parts, txTimeoutMs, idleMs }, counts)

  const answer = async (request: IncomingMessage, response: ServerResponse) => {
    const body = await readBody(request)
    if (token !== undefined && request.headers.authorization !== `Bearer ${token}`) {
      return send(response, 401, { message: 'Unauthorized', code: 'AUTH_JWT_INVALID' })
    }
    if (request.method === 'GET' && request.url === '/v2') return send(response, 200, {})
    if (request.method !== 'POST' || request.url !== '/v2/pipeline') {
      return send(response, 404, { message: 'not found', code: 'NOT_FOUND' })
    }
    const fault = faults.take()
    if (fault !== undefined && (await failsBefore(fault, response))) return
    try {
      const result = await pipelines.run(JSON.parse(body) as PipelineRequest)
      if (fault === undefined || !failsAfter(fault, response, result)) send(response, 200, result)
    } catch (error) {
      if (!(error instanceof HranaFault)) throw error
      send(response, 400, { message: error.message, code: error.code })
    }
  }

  const server = createServer((request, response) => {
    answer(request, response).catch((error: unknown) => {
      if (response.headersSent) response.destroy()
      else send(response, 500, { message: String(error), code: 'INTERNAL' })
    })
  })
  // Longer than any client keeps an idle connection, or it reuses one that is just being closed.
  server.keepAliveTimeout = 60_000
  server.listen(port, '127.0.0.1')
  await once(server, 'listening')
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    faults: faults.switches,
    counts: () => ({ ...counts }),
    reset: () => {
      Object.assign(counts, zero())
      faults.switches.clear()
    },
    close: async () => {
      if (!server.listening) return
      const closed = once(server, 'close')
      server.close()
      server.closeAllConnections()
      await closed
      pipelines.closeAll()
    },
  }
}

const useWriteAheadLog = (file: string) => {
  const db = new Database(file)
  db.exec('PRAGMA journal_mode = WAL')
  db.close()
}

const readBody = async (request: IncomingMessage): Promise<string> => {
  const chunks: Buffer[] = []
  for await (const chunk of request) chunks.push(chunk as Buffer)
  return Buffer.concat(chunks).toString('utf8')
}

const send = (response: ServerResponse, status: number, body: object) => {
  response.writeHead(status, { 'content-type': 'application/json' }).end(JSON.stringify(body))
}

/** True when the fault has answered (or cut the line) before anything ran. */
const failsBefore = async (fault: Fault, response: ServerResponse): Promise<boolean> => {
  if (fault.kind === 'delay') {
    const gone = once(response, 'close')
    const passed = new Promise<void>((done) => setTimeout(done, fault.ms).unref())
    await Promise.race([gone, passed])
    return response.destroyed
  }
  if (fault.kind === 'status') {
    send(response, fault.status, { message: 'the server has a fault', code: 'SERVER_FAULT' })
    return true
  }
  if (fault.kind === 'drop-before') response.destroy()
  return fault.kind === 'drop-before'
}

/** True when the fault has spoilt the answer of a pipeline that ran. */
const failsAfter = (fault: Fault, response: ServerResponse, result: object): boolean => {
  const text = JSON.stringify(result)
  if (fault.kind === 'drop-after') response.destroy()
  else if (fault.kind === 'half-body') {
    response.writeHead(200, { 'content-type': 'application/json', 'content-length': text.length })
    response.write(text.slice(0, text.length / 2), () => response.destroy())
  } else if (fault.kind === 'not-json') {
    response.writeHead(200, { 'content-type': 'application/json' }).end('<p>try again</p>')
  } else return false
  return true
}
