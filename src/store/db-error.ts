/**
 * conflict: a primary key or unique value is taken; busy: another writer holds the database or we
 * are asked to slow down; unavailable: it could not be reached or used; bug: our own mistake.
 */
export const dbErrorCodes = ['conflict', 'busy', 'unavailable', 'bug'] as const
export type DbErrorCode = (typeof dbErrorCodes)[number]

type Details = {
  readonly statementIndex?: number | undefined
  readonly constraint?: string | undefined
  readonly cause?: unknown
}

/** What every adapter rejects with. `message` may hold SQL: for the log, never for an answer. */
export class DbError extends Error {
  readonly code: DbErrorCode
  /** Index in the batch of the statement that failed, where the driver tells. */
  readonly statementIndex: number | undefined
  /** For a conflict: the columns that collided, as `table.column, table.column`. */
  readonly constraint: string | undefined

  constructor(code: DbErrorCode, message: string, details: Details = {}) {
    super(message, { cause: details.cause })
    this.name = 'DbError'
    this.code = code
    this.statementIndex = details.statementIndex
    this.constraint = details.constraint
  }
}

/** True for a DbError, of the given code when one is given. */
export const isDbError = (error: unknown, code?: DbErrorCode): error is DbError =>
  error instanceof DbError && (code === undefined || error.code === code)

/** True for a conflict on exactly these columns, e.g. `line.docket, line.seq`. */
export const isConflictOn = (error: unknown, constraint: string): error is DbError =>
  isDbError(error, 'conflict') && error.constraint === constraint
