import { eq, type InferSelectModel } from 'drizzle-orm'
import { build, toQuery, toStmt } from './build'
import type { Query, Stmt } from './db'
import { estimate } from './schema'

/** An estimate kept once under the digest of its inputs; it is never changed. */
export type StoredEstimate = Readonly<InferSelectModel<typeof estimate>>

/** Keeps an estimate; one with the same digest stays as it is. */
export const insertEstimate = (row: StoredEstimate): Stmt =>
  toStmt(build.insert(estimate).values(row).onConflictDoNothing())

/** The estimate with this digest. */
export const selectEstimate = (digest: string): Query<StoredEstimate> =>
  toQuery(estimate, build.select().from(estimate).where(eq(estimate.digest, digest)))
