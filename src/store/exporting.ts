import { asc, getTableColumns, gt, inArray, sql } from 'drizzle-orm'
import type { SQLiteTable } from 'drizzle-orm/sqlite-core'
import { build, toQuery, toStmt } from './build'
import type { Query, Stmt } from './db'
import { access, estimate, freeText, head, line, person, photo, settings } from './schema'

/** Dockets of one page of an export, by id behind `after`. */
const page = (after: string, limit: number) =>
  build
    .select({ docket: head.docket })
    .from(head)
    .where(gt(head.docket, after))
    .orderBy(asc(head.docket))
    .limit(limit)

/** What belongs to a docket, parents before children: a line needs its head. */
const TABLES = {
  heads: head,
  lines: line,
  people: person,
  texts: freeText,
  photos: photo,
  accesses: access,
} as const
export type DocketTable = keyof typeof TABLES
export const DOCKET_TABLES = Object.keys(TABLES) as readonly DocketTable[]

const ALL = { ...TABLES, estimates: estimate, settings } as const
export type ExportTable = keyof typeof ALL

const rowsOf = <T extends SQLiteTable>(table: T, where: ReturnType<typeof sql>) =>
  toQuery(table, build.select().from(table).where(where))

/**
 * Everything that belongs to a page of dockets, with the estimates their lines refer to. Keys are
 * the customers' only, as the hashes they are kept as: a link given out holds after a move.
 */
export const selectExport = (after: string, limit: number) => ({
  heads: rowsOf(head, sql`${head.docket} in ${page(after, limit)}`),
  lines: rowsOf(line, sql`${line.docket} in ${page(after, limit)}`),
  people: rowsOf(person, sql`${person.docket} in ${page(after, limit)}`),
  texts: rowsOf(freeText, sql`${freeText.docket} in ${page(after, limit)}`),
  photos: rowsOf(photo, sql`${photo.docket} in ${page(after, limit)}`),
  accesses: rowsOf(access, sql`${access.docket} in ${page(after, limit)}`),
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

/** The last docket of each part of an export, `size` dockets to a part; the last part has none. */
export const selectPartEnds = (size: number): Query<string> => ({
  stmt: {
    sql: `select docket from (select docket, row_number() over (order by docket) as n,
      count(*) over () as of from head) where n % ? = 0 and n < of order by docket`,
    args: [size],
  },
  map: (rows) => rows.map((row) => String(row.docket)),
})

type Given = Readonly<Record<string, unknown>>

const FITS: Readonly<Record<string, (value: unknown) => boolean>> = {
  string: (v) => typeof v === 'string',
  number: (v) => Number.isSafeInteger(v),
  boolean: (v) => typeof v === 'boolean',
  json: (v) => v !== undefined && v !== null,
}

/** Names of what does not fit a table's columns: a value of another type, one missing, one unknown. */
export const unfitColumns = (table: ExportTable, row: Given): readonly string[] => {
  const columns = getTableColumns(ALL[table]) as Readonly<
    Record<
      string,
      { dataType: string; notNull: boolean; hasDefault: boolean; enumValues?: string[] }
    >
  >
  const unknown = Object.keys(row).filter((name) => !Object.hasOwn(columns, name))
  const unfit = Object.entries(columns).flatMap(([name, c]) => {
    const value = row[name] ?? null
    if (value === null) return c.notNull && !c.hasDefault ? [name] : []
    const known = !c.enumValues || c.enumValues.includes(value as string)
    return known && FITS[c.dataType]?.(value) ? [] : [name]
  })
  return [...unknown, ...unfit]
}

const MOST_ROWS = 50

/** Statements that put rows of an export into a table, a few dozen rows at a time. */
export const insertRows = (table: ExportTable, rows: readonly Given[]): readonly Stmt[] => {
  const stmts: Stmt[] = []
  for (let i = 0; i < rows.length; i += MOST_ROWS) {
    const query = build.insert(ALL[table]).values(rows.slice(i, i + MOST_ROWS) as never)
    stmts.push(toStmt(table === 'estimates' ? query.onConflictDoNothing() : query))
  }
  return stmts
}
