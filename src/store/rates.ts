import { lt, sql } from 'drizzle-orm'
import { build, toStmt } from './build'
import type { Query, Stmt } from './db'
import { rate } from './schema'

/** Counts one more request (or `by` of them) of a bucket in a window; gives the count so far. */
export const countRate = (bucket: string, window: number, by = 1): Query<number> => ({
  stmt: toStmt(
    build
      .insert(rate)
      .values({ bucket, window, count: by })
      .onConflictDoUpdate({
        target: [rate.bucket, rate.window],
        set: { count: sql`${rate.count} + ${by}` },
      })
      .returning({ count: rate.count }),
  ),
  map: (rows) => rows.map((row) => Number(row.count)),
})

/** Removes the windows before `window`. */
export const deleteOldRates = (window: number): Stmt =>
  toStmt(build.delete(rate).where(lt(rate.window, window)))
