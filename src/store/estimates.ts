import { eq, type InferSelectModel, sql } from 'drizzle-orm'
import { build, toQuery, toStmt } from './build'
import type { Query, Stmt } from './db'
import { estimate, line } from './schema'

/** An estimate kept once under the digest of its inputs; it is never changed. */
export type StoredEstimate = Readonly<InferSelectModel<typeof estimate>>

/** Keeps an estimate; one with the same digest stays as it is. */
export const insertEstimate = (row: StoredEstimate): Stmt =>
  toStmt(build.insert(estimate).values(row).onConflictDoNothing())

/** The estimate with this digest. */
export const selectEstimate = (digest: string): Query<StoredEstimate> =>
  toQuery(estimate, build.select().from(estimate).where(eq(estimate.digest, digest)))

/** Every estimate the lines of a docket refer to; a revision’s first option is the revision’s own. */
export const selectEstimatesOf = (docket: string): Query<StoredEstimate> =>
  toQuery(
    estimate,
    build
      .select()
      .from(estimate)
      .where(
        sql`${estimate.digest} in (select json_extract(${line.body}, '$.digest') from ${line} where ${line.docket} = ${docket} and ${line.kind} in ('estimated', 'revised') union all select json_extract(${line.body}, '$.options[1].digest') from ${line} where ${line.docket} = ${docket} and ${line.kind} = 'revised' union all select json_extract(${line.body}, '$.options[2].digest') from ${line} where ${line.docket} = ${docket} and ${line.kind} = 'revised')`,
      ),
  )

/** The inputs of one of the latest estimates, with the docket it stands on. */
export type LatestEstimate = {
  readonly docket: string
  readonly reference: string | null
  readonly title: string
  readonly inputs: unknown
}

/** The latest estimate of each of the dockets that were worked on last, newest first. */
export const selectLatestEstimates = (most: number): Query<LatestEstimate> => ({
  stmt: {
    sql: `select h.docket, h.reference, h.title, e.inputs from
        (select docket, reference, title, sort_at from head where reference is not null
          order by sort_at desc, docket desc limit ?) h
      join estimate e on e.digest = (select json_extract(l.body, '$.digest') from line l
        where l.docket = h.docket and l.kind in ('estimated', 'revised') order by l.seq desc limit 1)
      order by h.sort_at desc, h.docket desc`,
    args: [most],
  },
  map: (rows) =>
    rows.map((row) => ({
      docket: String(row.docket),
      reference: row.reference === null ? null : String(row.reference),
      title: String(row.title),
      inputs: JSON.parse(String(row.inputs)) as unknown,
    })),
})
