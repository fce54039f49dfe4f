import { and, asc, eq, gt, type InferSelectModel, inArray, max, sql } from 'drizzle-orm'
import { build, rowOf, toStmt } from './build'
import type { Query, Stmt } from './db'
import { line } from './schema'

/** A line of a docket as it is kept. `at` is in ms since 1970; device and n only from the bench. */
export type StoredLine = {
  readonly docket: string
  readonly seq: number
  readonly id: string
  readonly v: number
  readonly kind: string
  readonly body: unknown
  readonly by: string
  readonly device?: string
  readonly n?: number
  readonly at: number
}

/** A line before it has its place. */
export type NewLine = Omit<StoredLine, 'docket' | 'seq'>

/** Constraint of the conflict when somebody else wrote first. */
export const lineSeqTaken = 'line.docket, line.seq'
/** Constraint of the conflict when a line with this id is already there. */
export const lineIdTaken = 'line.id'

const toLine = ({ device, n, ...rest }: InferSelectModel<typeof line>): StoredLine => ({
  ...rest,
  ...(device === null ? {} : { device }),
  ...(n === null ? {} : { n }),
})

export const linesOf = (query: Parameters<typeof toStmt>[0]): Query<StoredLine> => ({
  stmt: toStmt(query),
  map: (rows) => rows.map((row) => toLine(rowOf(line, row))),
})

/** The lines of a docket in order; only those with seq > `after` when it is given. */
export const selectLines = (docket: string, after = 0): Query<StoredLine> =>
  linesOf(
    build
      .select()
      .from(line)
      .where(and(eq(line.docket, docket), gt(line.seq, after)))
      .orderBy(asc(line.seq)),
  )

/** The lines of the docket this one was opened like; none where it was opened anew. */
export const selectLinesOfLast = (docket: string): Query<StoredLine> =>
  linesOf(
    build
      .select()
      .from(line)
      .where(
        sql`${line.docket} = (select json_extract(o.body, '$.like') from ${line} o where o.docket = ${docket} and o.seq = 1)`,
      )
      .orderBy(asc(line.seq)),
  )

/** The lines with these ids, whatever their docket: what a bench device has sent before. */
export const selectLinesById = (ids: readonly string[]): Query<StoredLine> =>
  linesOf(
    build
      .select()
      .from(line)
      .where(inArray(line.id, [...ids])),
  )

/** The highest seq of a docket, 0 for none. */
export const selectMaxSeq = (docket: string): Query<number> => ({
  stmt: toStmt(
    build
      .select({ max: max(line.seq).as('max') })
      .from(line)
      .where(eq(line.docket, docket)),
  ),
  map: (rows) => rows.map((row) => Number(row.max ?? 0)),
})

/**
 * Appends lines as seq `rev` + 1 and on. Aborts its batch as a conflict on `lineSeqTaken` when the
 * docket is no longer at `rev`, and on `lineIdTaken` when an id is known. The head must stand before.
 */
export const insertLines = (docket: string, rev: number, lines: readonly NewLine[]): Stmt =>
  toStmt(build.insert(line).values(lines.map((each, i) => ({ ...each, docket, seq: rev + 1 + i }))))
