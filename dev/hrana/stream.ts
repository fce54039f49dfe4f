import { splitStatements } from '../../src/store/split-statements'
import type { Connections } from './connections'
import {
  type BatchResult,
  type HranaBatch,
  type HranaCondition,
  type HranaError,
  HranaFault,
  type HranaRequest,
  type HranaStmt,
  type StmtResult,
} from './protocol'
import { runStatement, toHranaError } from './run-statement'
import { takesWriteLock, type WriteLock } from './write-lock'

export type StreamOptions = {
  readonly connections: Connections
  readonly lock: WriteLock
  /** How long a transaction may stay open, ms. */
  readonly txTimeoutMs: number
}

/** One client's connection: it lives from its first pipeline until `close`, or until it idles out. */
export type HranaStream = {
  handle(request: HranaRequest): Promise<object>
  readonly closed: boolean
  close(): void
}

const storedSqlLimit = 50

export const openStream = ({ connections, lock, txTimeoutMs }: StreamOptions): HranaStream => {
  const db = connections.take()
  const owner = {}
  const stored = new Map<number, string>()
  let closed = false
  let timedOut = false
  // The driver keeps a statement that met a lock under way: such a connection is not used again.
  let metLock = false
  let timer: NodeJS.Timeout | undefined

  const endTransaction = () => {
    clearTimeout(timer)
    timer = undefined
    lock.release(owner)
  }
  const expire = () => {
    timedOut = true
    if (!closed && db.inTransaction) db.exec('ROLLBACK')
    endTransaction()
  }
  const afterStatement = () => {
    if (!db.inTransaction) endTransaction()
    else timer ??= setTimeout(expire, txTimeoutMs).unref()
  }
  const locked = async <T>(sql: string, work: () => T): Promise<T> => {
    if (timedOut) throw new HranaFault('TRANSACTION_TIMEOUT', 'Transaction timed-out')
    if (takesWriteLock(sql)) await lock.take(owner)
    try {
      return work()
    } catch (error) {
      metLock ||= (error as { code?: unknown }).code === 'SQLITE_BUSY'
      throw error
    } finally {
      afterStatement()
    }
  }
  const textOf = ({ sql, sql_id: id }: { sql?: string | null; sql_id?: number | null }): string => {
    const text = sql ?? (id === undefined || id === null ? undefined : stored.get(id))
    if (text === undefined) throw new HranaFault('SQL_NOT_FOUND', `SQL text ${id} not found`)
    return text
  }
  const execute = (stmt: HranaStmt): Promise<StmtResult> => {
    const sql = textOf(stmt)
    return locked(sql, () => runStatement(db, sql, stmt))
  }
  const batch = async ({ steps }: HranaBatch): Promise<BatchResult> => {
    const results: (StmtResult | null)[] = steps.map(() => null)
    const errors: (HranaError | null)[] = steps.map(() => null)
    for (const [i, { condition, stmt }] of steps.entries()) {
      if (condition && !holds(condition, results, errors)) continue
      try {
        results[i] = await execute(stmt)
      } catch (error) {
        errors[i] = toHranaError(error)
      }
    }
    return { step_results: results, step_errors: errors }
  }
  const sequence = async (script: string) => {
    for (const sql of splitStatements(script)) {
      await locked(sql, () => runStatement(db, sql, { want_rows: false }))
    }
  }
  const store = (id: number, sql: string) => {
    if (stored.size >= storedSqlLimit) {
      throw new HranaFault('SQL_STORE_TOO_MANY', `more than ${storedSqlLimit} SQL texts stored`)
    }
    stored.set(id, sql)
  }
  const close = () => {
    if (closed) return
    if (db.inTransaction) db.exec('ROLLBACK')
    closed = true
    endTransaction()
    if (metLock) db.close()
    else connections.give(db)
  }

  return {
    get closed() {
      return closed
    },
    close,
    handle: async (request) => {
      switch (request.type) {
        case 'execute':
          return { type: 'execute', result: await execute(request.stmt) }
        case 'batch':
          return { type: 'batch', result: await batch(request.batch) }
        case 'sequence':
          await sequence(textOf(request))
          return { type: 'sequence' }
        case 'store_sql':
          store(request.sql_id, request.sql)
          return { type: 'store_sql' }
        case 'close_sql':
          stored.delete(request.sql_id)
          return { type: 'close_sql' }
        case 'close':
          close()
          return { type: 'close' }
        default:
          throw new HranaFault('UNKNOWN_REQUEST', 'this request is not known here')
      }
    },
  }
}

const holds = (
  condition: HranaCondition,
  results: readonly (StmtResult | null)[],
  errors: readonly (HranaError | null)[],
): boolean => {
  switch (condition.type) {
    case 'ok':
      return results[condition.step] != null
    case 'error':
      return errors[condition.step] != null
    case 'not':
      return !holds(condition.cond, results, errors)
    case 'and':
      return condition.conds.every((each) => holds(each, results, errors))
    case 'or':
      return condition.conds.some((each) => holds(each, results, errors))
  }
}
