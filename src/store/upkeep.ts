import { and, eq, inArray, isNotNull, lt, lte, notExists, or, sql } from 'drizzle-orm'
import { build, toStmt } from './build'
import type { Query, Stmt } from './db'
import { access, freeText, head, person, photo, session } from './schema'

const has = (table: typeof person | typeof freeText | typeof photo) =>
  sql`exists (select 1 from ${table} where ${table.docket} = ${head.docket})`

/**
 * Dockets in one of these states that nobody changed since `before` (UTC ms), the oldest first. With
 * `holding`, only those that still have personal data.
 */
export const selectUnchanged = (given: {
  readonly states: readonly string[]
  readonly before: number
  readonly holding: boolean
  readonly limit: number
}): Query<string> => ({
  stmt: toStmt(
    build
      .select({ docket: head.docket })
      .from(head)
      .where(
        and(
          inArray(head.state, [...given.states]),
          lt(head.updatedAt, given.before),
          given.holding ? or(has(person), has(freeText), has(photo)) : undefined,
        ),
      )
      .orderBy(head.updatedAt)
      .limit(given.limit),
  ),
  map: (rows) => rows.map((row) => String(row.docket)),
})

/** Removes keys that opened nothing any more before `before` and that no session hangs on. */
export const deleteSpentAccesses = (before: number): Stmt =>
  toStmt(
    build
      .delete(access)
      .where(
        and(
          or(
            and(isNotNull(access.expiresAt), lte(access.expiresAt, before)),
            and(isNotNull(access.revokedAt), lte(access.revokedAt, before)),
          ),
          notExists(
            build.select({ one: sql`1` }).from(session).where(eq(session.access, access.hash)),
          ),
        ),
      ),
  )
