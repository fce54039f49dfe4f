import { DbError, type DbErrorCode } from './db-error'

/** A fault on the way: no answer, a cut one, or a refusal that is not about our statements. */
export class WireFault extends Error {
  readonly busy: boolean
  constructor(
    message: string,
    options: { readonly busy?: boolean; readonly cause?: unknown } = {},
  ) {
    super(message, { cause: options.cause })
    this.name = 'WireFault'
    this.busy = options.busy ?? false
  }
}

// The driver's errors are not uniform: a file tells the extended code, a server only the base code
// and a message, and a server's message may carry the same prefix several times.
const collision = /UNIQUE constraint failed: ([\w., ]+)/
const busyCodes = new Set(['SQLITE_BUSY', 'SQLITE_LOCKED'])
const awayCodes = new Set([
  ...['SQLITE_IOERR', 'SQLITE_FULL', 'SQLITE_CANTOPEN', 'SQLITE_READONLY', 'SQLITE_NOTADB'],
  ...['SQLITE_CORRUPT', 'SQLITE_PROTOCOL', 'SERVER_ERROR', 'HRANA_PROTO_ERROR'],
  ...['HRANA_CLOSED_ERROR', 'STREAM_EXPIRED', 'TRANSACTION_TIMEOUT', 'BLOCKED'],
])
const awayNames = new Set(['TimeoutError', 'AbortError', 'SyntaxError'])

/** Turns whatever a driver throws into one of the four errors. */
export const mapError = (error: unknown): DbError => {
  if (error instanceof DbError) return error
  const { statementIndex } = (error ?? {}) as { readonly statementIndex?: unknown }
  const message = error instanceof Error ? error.message : String(error)
  const constraint = collision.exec(message)?.[1]?.trim()
  return new DbError(codeOf(error, constraint), message, {
    statementIndex: typeof statementIndex === 'number' ? statementIndex : undefined,
    constraint,
    cause: error,
  })
}

const codeOf = (error: unknown, constraint: string | undefined): DbErrorCode => {
  const wire = findWireFault(error)
  if (wire !== undefined) return wire.busy ? 'busy' : 'unavailable'
  const { code, name } = (error ?? {}) as { readonly code?: unknown; readonly name?: unknown }
  if (code === 'SQLITE_CONSTRAINT') return constraint === undefined ? 'bug' : 'conflict'
  if (busyCodes.has(String(code))) return 'busy'
  return awayCodes.has(String(code)) || awayNames.has(String(name)) ? 'unavailable' : 'bug'
}

// The driver may wrap the fault in errors of its own.
const findWireFault = (error: unknown): WireFault | undefined => {
  let at = error
  for (let depth = 0; at instanceof Error && depth < 8; depth += 1) {
    if (at instanceof WireFault) return at
    at = at.cause
  }
  return undefined
}
