import type { InStatement, InValue, ResultSet } from '@libsql/client/http'
import type { Row, Rows, Stmt } from './db'
import { DbError } from './db-error'

// A plain number is bound as a real by the driver, so integers must travel as bigint.
const bindValue = (value: unknown): InValue => {
  if (typeof value === 'string' || value === null || value instanceof Uint8Array) return value
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    throw new DbError('bug', `cannot bind ${typeof value} ${String(value)}`)
  }
  if (!Number.isInteger(value)) return value
  if (!Number.isSafeInteger(value)) throw new DbError('bug', `integer out of range: ${value}`)
  return BigInt(value)
}

/** Our statements in the driver's shape. Throws DbError `bug` for what cannot be bound exactly. */
export const toDriver = (stmts: readonly Stmt[]): InStatement[] =>
  stmts.map(({ sql, args }) => ({ sql, args: args.map(bindValue) }))

/**
 * Throws DbError `bug` unless every statement only reads: neither SQLite nor the driver's read mode
 * refuses a change.
 */
export const checkReads = (stmts: readonly Stmt[]): void => {
  const writing = stmts.find(({ sql }) => !onlyReads(sql))
  if (writing !== undefined) throw new DbError('bug', `not a reading statement: ${writing.sql}`)
}

const onlyReads = (sql: string) =>
  /^\s*(select|values|explain|pragma)\b/i.test(sql) ||
  (/^\s*with\b/i.test(sql) && !/\b(insert|update|delete|replace)\b/i.test(sql))

/** The driver's results as plain rows; row counts are left out because drivers disagree on them. */
export const fromDriver = (results: readonly ResultSet[]): Rows =>
  results.map((result) => result.rows.map((row) => ({ ...row }) as Row))
