import { asc, gt, inArray, sql } from 'drizzle-orm'
import type { SQLiteTable } from 'drizzle-orm/sqlite-core'
import { build, toQuery, toStmt } from './build'
import type { Query, Stmt } from './db'
import { estimate, freeText, head, line, person, photo, settings } from './schema'

/** Dockets of one page of an export, by id behind `after`. */
const page = (after: string, limit: number) =>
  build
    .select({ docket: head.docket })
    .from(head)
    .where(gt(head.docket, after))
    .orderBy(asc(head.docket))
    .limit(limit)

const OWNED = { head, line, person, freeText, photo } as const

const rowsOf = <T extends SQLiteTable>(table: T, where: ReturnType<typeof sql>) =>
  toQuery(table, build.select().from(table).where(where))

/** Everything that belongs to a page of dockets, with the estimates their lines refer to. */
export const selectExport = (after: string, limit: number) => ({
  heads: rowsOf(OWNED.head, sql`${head.docket} in ${page(after, limit)}`),
  lines: rowsOf(OWNED.line, sql`${line.docket} in ${page(after, limit)}`),
  people: rowsOf(OWNED.person, sql`${person.docket} in ${page(after, limit)}`),
  texts: rowsOf(OWNED.freeText, sql`${freeText.docket} in ${page(after, limit)}`),
  photos: rowsOf(OWNED.photo, sql`${photo.docket} in ${page(after, limit)}`),
  estimates: rowsOf(
    estimate,
    sql`${estimate.digest} in (select json_extract(${line.body}, '$.digest') from ${line} where ${line.docket} in ${page(after, limit)})`,
  ),
})

/** Every revision of the settings, oldest first. */
export const selectAllSettings = () =>
  toQuery(settings, build.select().from(settings).orderBy(asc(settings.rev)))

/** Which of these dockets are there already. */
export const selectKnownDockets = (ids: readonly string[]): Query<string> => ({
  stmt: toStmt(
    build
      .select({ docket: head.docket })
      .from(head)
      .where(inArray(head.docket, [...ids])),
  ),
  map: (rows) => rows.map((row) => String(row.docket)),
})

type Rows = readonly Readonly<Record<string, unknown>>[]

const TABLES = { heads: head, lines: line, people: person, texts: freeText, photos: photo } as const
export type ImportTable = keyof typeof TABLES

const MOST_ROWS = 50

/** Statements that put rows of an export into a table, a few dozen rows at a time. */
export const insertRows = (
  table: ImportTable | 'estimates' | 'settings',
  rows: Rows,
): readonly Stmt[] => {
  const into = table === 'estimates' ? estimate : table === 'settings' ? settings : TABLES[table]
  const stmts: Stmt[] = []
  for (let i = 0; i < rows.length; i += MOST_ROWS) {
    const query = build.insert(into).values(rows.slice(i, i + MOST_ROWS) as never)
    stmts.push(toStmt(table === 'estimates' ? query.onConflictDoNothing() : query))
  }
  return stmts
}
