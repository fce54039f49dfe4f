import type Database from 'libsql'
import { splitStatements } from '../../src/store/split-statements'
import { type HranaError, HranaFault, type HranaStmt, type StmtResult } from './protocol'
import { fromWire, toWire } from './values'

type Native = Database.Database

/** Runs one statement; `sql` is its text, looked up already. Throws the native error. */
export const runStatement = (db: Native, sql: string, stmt: HranaStmt): StmtResult => {
  if (sql.includes(';') && splitStatements(sql).length > 1) {
    throw new HranaFault('SQL_MANY_STATEMENTS', 'SQL string contains more than one statement')
  }
  const prepared = db.prepare(sql) as unknown as NativeStatement
  prepared.safeIntegers(true)
  const args = argsOf(stmt)
  const before = totalChanges(db)
  if (!returnsRows(prepared)) {
    prepared.run(args)
    return { cols: [], rows: [], ...effects(db, before) }
  }
  const rows = prepared.all(args).map((row) => row.map(toWire))
  const cols = prepared.columns().map(({ name, type }) => ({ name, decltype: type ?? null }))
  return { cols, rows: stmt.want_rows === false ? [] : rows, ...effects(db, before) }
}

/** What went wrong in the words of a server: base code only, the message behind a prefix. */
export const toHranaError = (error: unknown): HranaError => {
  if (error instanceof HranaFault) return { message: error.message, code: error.code }
  const { code, rawCode, message } = error as Error & { code?: unknown; rawCode?: unknown }
  const base = typeof rawCode === 'number' ? baseCodes[rawCode & 0xff] : undefined
  if (base === undefined && typeof code !== 'string') throw error
  return { message: `SQLite error: ${message}`, code: base ?? 'SQLITE_UNKNOWN' }
}

type NativeStatement = {
  safeIntegers(on: boolean): void
  raw(on: boolean): void
  run(args: unknown): unknown
  all(args: unknown): unknown[][]
  columns(): { readonly name: string; readonly type: string | null }[]
}

// The driver tells whether a statement returns rows only by throwing.
const returnsRows = (prepared: NativeStatement): boolean => {
  try {
    prepared.raw(true)
    return true
  } catch {
    return false
  }
}

const argsOf = ({ args = [], named_args: named = [] }: HranaStmt): unknown =>
  named.length === 0
    ? args.map(fromWire)
    : Object.fromEntries(
        named.map(({ name, value }) => [name.replace(/^[:@$]/, ''), fromWire(value)]),
      )

const numberOf = (db: Native, expression: string): bigint => {
  const prepared = db.prepare(`SELECT ${expression}`) as unknown as NativeStatement
  prepared.safeIntegers(true)
  prepared.raw(true)
  return prepared.all([])[0]?.[0] as bigint
}

const totalChanges = (db: Native) => numberOf(db, 'total_changes()')

const effects = (db: Native, before: bigint) => ({
  affected_row_count: totalChanges(db) === before ? 0 : Number(numberOf(db, 'changes()')),
  last_insert_rowid: numberOf(db, 'last_insert_rowid()').toString(),
})

const baseCodes: Readonly<Record<number, string>> = {
  1: 'SQLITE_ERROR',
  3: 'SQLITE_PERM',
  4: 'SQLITE_ABORT',
  5: 'SQLITE_BUSY',
  6: 'SQLITE_LOCKED',
  7: 'SQLITE_NOMEM',
  8: 'SQLITE_READONLY',
  9: 'SQLITE_INTERRUPT',
  10: 'SQLITE_IOERR',
  11: 'SQLITE_CORRUPT',
  13: 'SQLITE_FULL',
  14: 'SQLITE_CANTOPEN',
  18: 'SQLITE_TOOBIG',
  19: 'SQLITE_CONSTRAINT',
  20: 'SQLITE_MISMATCH',
  21: 'SQLITE_MISUSE',
  25: 'SQLITE_RANGE',
  26: 'SQLITE_NOTADB',
}
