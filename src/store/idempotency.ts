import { and, eq, gt, type InferSelectModel, lte } from 'drizzle-orm'
import { build, toQuery, toStmt } from './build'
import type { Query, Stmt } from './db'
import { idempotency } from './schema'

/** A request that was answered under a key: its fingerprint, and the answer once there is one. */
export type KeptAnswer = Readonly<InferSelectModel<typeof idempotency>>

/** Constraint of the conflict when the key is taken. */
export const keyTaken = 'idempotency.scope, idempotency.key'

/**
 * Takes a key, with the answer where it is known by then. Put these first in their batch: a second
 * request with the key then aborts as a conflict on `keyTaken` before anything else can collide.
 */
export const reserveKey = (row: KeptAnswer): readonly Stmt[] => [
  toStmt(build.delete(idempotency).where(and(named(row), lte(idempotency.expiresAt, row.at)))),
  toStmt(build.insert(idempotency).values(row)),
]

/** Adds the answer to a key taken before. */
export const finishKey = (
  key: Pick<KeptAnswer, 'scope' | 'key'>,
  answer: { readonly status: number; readonly body: string },
): Stmt => toStmt(build.update(idempotency).set(answer).where(named(key)))

/** What was answered under a key that holds at `now`. */
export const findKey = (scope: string, key: string, now: number): Query<KeptAnswer> =>
  toQuery(
    idempotency,
    build
      .select()
      .from(idempotency)
      .where(and(named({ scope, key }), gt(idempotency.expiresAt, now))),
  )

/** Removes the keys that have expired. */
export const deleteExpiredKeys = (now: number): Stmt =>
  toStmt(build.delete(idempotency).where(lte(idempotency.expiresAt, now)))

const named = ({ scope, key }: Pick<KeptAnswer, 'scope' | 'key'>) =>
  and(eq(idempotency.scope, scope), eq(idempotency.key, key))
