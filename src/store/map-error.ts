import { DbError, type DbErrorCode } from './db-error'

/** A fault below the protocol: no answer, a cut one, or one that is not JSON. */
export class WireFault extends Error {
  constructor(cause: unknown) {
    super(`no usable answer from the database: ${textOf(cause)}`, { cause })
    this.name = 'WireFault'
  }
}

// The driver's errors are not uniform: a file tells the extended code, a server only the base code
// and a message, and a server's message may carry the same prefix several times.
const collision = /UNIQUE constraint failed: ([\w., ]+)/
const busyCodes = new Set(['SQLITE_BUSY', 'SQLITE_LOCKED'])
const awayCodes = new Set([
  ...['SQLITE_IOERR', 'SQLITE_FULL', 'SQLITE_CANTOPEN', 'SQLITE_READONLY', 'SQLITE_NOTADB'],
  ...['SQLITE_CORRUPT', 'SQLITE_PROTOCOL', 'SERVER_ERROR', 'HRANA_PROTO_ERROR'],
  ...['HRANA_CLOSED_ERROR', 'CLIENT_CLOSED', 'STREAM_EXPIRED', 'TRANSACTION_TIMEOUT', 'BLOCKED'],
])
const networkNames = new Set(['TimeoutError', 'AbortError', 'SyntaxError', 'WireFault'])

/** Turns whatever a driver throws into one of the four errors. */
export const mapError = (error: unknown): DbError => {
  if (error instanceof DbError) return error
  const fields = fieldsOf(error)
  const message = textOf(error)
  const constraint = collision.exec(message)?.[1]?.trim()
  const details = { statementIndex: fields.statementIndex, constraint, cause: error }
  return new DbError(codeOf(fields, constraint), message, details)
}

type Fields = {
  readonly code: string
  readonly name: string
  readonly status: number | undefined
  readonly statementIndex: number | undefined
}

const codeOf = ({ code, name, status }: Fields, constraint: string | undefined): DbErrorCode => {
  if (code === 'SQLITE_CONSTRAINT') return constraint === undefined ? 'bug' : 'conflict'
  if (busyCodes.has(code) || status === 429) return 'busy'
  if (awayCodes.has(code) || networkNames.has(name)) return 'unavailable'
  if (status !== undefined && (status === 401 || status === 403 || status >= 500))
    return 'unavailable'
  return 'bug'
}

const fieldsOf = (error: unknown): Fields => {
  const wire = findWireFault(error)
  const { code, name, statementIndex } = (error ?? {}) as Record<string, unknown>
  return {
    code: typeof code === 'string' ? code : '',
    name: wire !== undefined ? 'WireFault' : typeof name === 'string' ? name : '',
    status: statusOf(error),
    statementIndex: typeof statementIndex === 'number' ? statementIndex : undefined,
  }
}

const chain = (error: unknown): readonly unknown[] => {
  const seen: unknown[] = []
  for (let at = error; at instanceof Error && seen.length < 8; at = at.cause) seen.push(at)
  return seen
}

const findWireFault = (error: unknown) => chain(error).find((e) => e instanceof WireFault)

const statusOf = (error: unknown): number | undefined =>
  chain(error)
    .map((e) => (e as { readonly status?: unknown }).status)
    .find((status) => typeof status === 'number')

const textOf = (error: unknown): string => (error instanceof Error ? error.message : String(error))
