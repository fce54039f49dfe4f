import { getTableColumns, type InferSelectModel } from 'drizzle-orm'
import type { SQLiteTable } from 'drizzle-orm/sqlite-core'
import { drizzle } from 'drizzle-orm/sqlite-proxy'
import type { Bound, Query, Row, Stmt } from './db'

/** Drizzle as a builder of statements only: running a query through it is a mistake. */
export const build = drizzle(async () => {
  throw new Error('statements are run through the Db port')
})

type Buildable = { toSQL(): { readonly sql: string; readonly params: readonly unknown[] } }

/** A built query as a statement for the port. */
export const toStmt = (query: Buildable): Stmt => {
  const { sql, params } = query.toSQL()
  return { sql, args: params as readonly Bound[] }
}

/** A row of `table` with the types of its columns (JSON parsed, booleans). */
export const rowOf = <T extends SQLiteTable>(table: T, row: Row): InferSelectModel<T> => {
  const columns = Object.entries(getTableColumns(table))
  const values = columns.map(([key, column]) => {
    const value = row[column.name] ?? null
    return [key, value === null ? null : column.mapFromDriverValue(value)]
  })
  return Object.fromEntries(values) as InferSelectModel<T>
}

/** A query whose rows are whole rows of `table`. */
export const toQuery = <T extends SQLiteTable>(
  table: T,
  query: Buildable,
): Query<InferSelectModel<T>> => ({
  stmt: toStmt(query),
  map: (rows) => rows.map((row) => rowOf(table, row)),
})
