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

/** Every estimate the lines of a docket refer to. */
export const selectEstimatesOf = (docket: string): Query<StoredEstimate> =>
  toQuery(
    estimate,
    build
      .select()
      .from(estimate)
      .where(
        sql`${estimate.digest} in (select json_extract(${line.body}, '$.digest') from ${line} where ${line.docket} = ${docket} and ${line.kind} in ('estimated', 'revised'))`,
      ),
  )
