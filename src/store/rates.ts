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

/** Constraint of the conflict when a bucket is full. */
export const bucketFull = 'rate.bucket, rate.window'

/** A bucket that may be counted up to `most` in its window. */
export type Bucket = { readonly name: string; readonly window: number; readonly most: number }

/**
 * Counts one more of each bucket; where one is full the whole batch aborts as a conflict on
 * `bucketFull`, whatever was read before and however many ask at once.
 */
export const countUpTo = (buckets: readonly Bucket[]): readonly Stmt[] =>
  buckets.flatMap(({ name, window, most }) => [
    countRate(name, window).stmt,
    {
      sql: `insert into rate (bucket, "window", count)
        select bucket, "window", count from rate where bucket = ? and "window" = ? and count > ?`,
      args: [name, window, most],
    },
  ])

/** The buckets of these that were counted in their window before, and whether they are full. */
export const selectBuckets = (
  buckets: readonly Bucket[],
): Query<{ readonly name: string; readonly full: boolean }> => ({
  stmt: {
    sql: `select r.bucket, r.count >= b.value ->> 'most' as "full" from json_each(?) b join rate r
      on r.bucket = b.value ->> 'name' and r."window" = b.value ->> 'window'`,
    args: [JSON.stringify(buckets)],
  },
  map: (rows) => rows.map((row) => ({ name: String(row.bucket), full: row.full === 1 })),
})

/** Removes the windows before `window`. */
export const deleteOldRates = (window: number): Stmt =>
  toStmt(build.delete(rate).where(lt(rate.window, window)))
