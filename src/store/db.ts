import type { DbError } from './db-error'

/** A value that may be bound. Integral numbers are bound as integers, all others as reals. */
export type Bound = string | number | null | Uint8Array

/** One SQL text (a single statement) with its positional arguments. */
export type Stmt = { readonly sql: string; readonly args: readonly Bound[] }

/** One result row by column name. A blob comes back as an ArrayBuffer. */
export type Row = Readonly<Record<string, string | number | null | ArrayBuffer>>

/** The rows of each statement, in the order of the statements. */
export type Rows = readonly (readonly Row[])[]

/** A statement with the function that turns its rows into values of the domain. */
export type Query<T> = {
  readonly stmt: Stmt
  readonly map: (rows: readonly Row[]) => readonly T[]
}

/**
 * `retry`: send the batch once more when the first try ended as `unavailable`. Only safe when the
 * first statement reserves an idempotency key: a batch that did arrive then ends as `conflict`.
 */
export type WriteOptions = { readonly retry?: boolean }

/**
 * The one way to the database. Each call is one round trip and one transaction; there are no
 * transactions that stay open between calls. Rejects with {@link DbError} only.
 */
export interface Db {
  /** Runs the statements on one snapshot. Tried once more when the database is `unavailable`. */
  read(stmts: readonly Stmt[]): Promise<Rows>
  /** Runs the statements as one unit: all take effect, or none when any of them fails. */
  write(stmts: readonly Stmt[], options?: WriteOptions): Promise<Rows>
  /** Leaves nothing of deleted rows in the files, where the database is a file of this machine. */
  scrub?(): Promise<void>
  /** Waits for writes under way, then lets go of the connection. */
  close(): Promise<void>
}

/** Sends queries in one read batch and gives each its typed rows, in order. */
export const readAll = async <const Q extends readonly Query<unknown>[]>(
  db: Db,
  queries: Q,
): Promise<{ readonly [K in keyof Q]: ReturnType<Q[K]['map']> }> => {
  const results = await db.read(queries.map((query) => query.stmt))
  const mapped = queries.map((query, i) => query.map(results[i] ?? []))
  return mapped as unknown as { readonly [K in keyof Q]: ReturnType<Q[K]['map']> }
}

/** Sends one query and gives its first row, or null. */
export const readOne = async <T>(db: Db, query: Query<T>): Promise<T | null> => {
  const [rows] = await readAll(db, [query])
  return rows[0] ?? null
}
