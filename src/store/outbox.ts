import type { InferSelectModel } from 'drizzle-orm'
import { and, asc, eq, inArray, isNull, lt, lte, or, sql } from 'drizzle-orm'
import { build, toQuery, toStmt } from './build'
import type { Query, Stmt } from './db'
import { outbox } from './schema'

/** A message to deliver at least once. `payload` holds references, no personal data. */
export type OutboxRow = Readonly<InferSelectModel<typeof outbox>>

export type NewMessage = {
  readonly id: string
  readonly kind: string
  readonly docket: string | null
  readonly payload: unknown
  /** Two messages with the same value are one. */
  readonly dedupe: string
  readonly nextAt: number
}

/** A claim: who (a fresh random text), from when until when it holds, how many. */
export type Claim = {
  readonly claim: string
  readonly now: number
  readonly leaseUntil: number
  readonly limit: number
}

/** Adds a message to the batch that makes it necessary; one with the same `dedupe` stays. */
export const enqueue = (message: NewMessage): Stmt =>
  toStmt(
    build
      .insert(outbox)
      .values({ ...message, at: message.nextAt })
      .onConflictDoNothing({ target: outbox.dedupe }),
  )

/** Takes messages that are due and that nobody holds, and counts the attempt. */
export const claimMessages = ({ claim, now, leaseUntil, limit }: Claim): Query<OutboxRow> => {
  const due = build
    .select({ id: outbox.id })
    .from(outbox)
    .where(
      and(
        eq(outbox.status, 'waiting'),
        lte(outbox.nextAt, now),
        or(isNull(outbox.leaseUntil), lte(outbox.leaseUntil, now)),
      ),
    )
    .orderBy(asc(outbox.nextAt), asc(outbox.id))
    .limit(limit)
  const set = { claim, leaseUntil, attempts: sql`${outbox.attempts} + 1` }
  return toQuery(outbox, build.update(outbox).set(set).where(inArray(outbox.id, due)).returning())
}

const held = (id: string, claim: string) =>
  and(eq(outbox.id, id), eq(outbox.claim, claim), eq(outbox.status, 'waiting'))

/** Marks a message as delivered. No row comes back when the claim was lost meanwhile. */
export const messageDone = (id: string, claim: string): Query<OutboxRow> =>
  toQuery(
    outbox,
    build
      .update(outbox)
      .set({ status: 'done', leaseUntil: null, claim: null })
      .where(held(id, claim))
      .returning(),
  )

/** Gives a message back, to be tried at `nextAt`; null gives it up for good. */
export const messageFailed = (
  id: string,
  claim: string,
  nextAt: number | null,
): Query<OutboxRow> => {
  const next = nextAt === null ? { status: 'dead' as const } : { nextAt }
  return toQuery(
    outbox,
    build
      .update(outbox)
      .set({ ...next, leaseUntil: null, claim: null })
      .where(held(id, claim))
      .returning(),
  )
}

/** Removes messages that were delivered and were due before `dueBefore`. */
export const deleteDelivered = (dueBefore: number): Stmt =>
  toStmt(build.delete(outbox).where(and(eq(outbox.status, 'done'), lt(outbox.nextAt, dueBefore))))

/** Removes what happened before `before`, delivered or not: nobody waits for it any more. */
export const deleteOldMessages = (before: number): Stmt =>
  toStmt(build.delete(outbox).where(lt(outbox.at, before)))

/** How the outbox stands: number of messages by status. */
export const countMessages = (): Query<{ readonly status: string; readonly count: number }> => ({
  stmt: toStmt(
    build
      .select({ status: outbox.status, count: sql`count(*)`.as('count') })
      .from(outbox)
      .groupBy(outbox.status),
  ),
  map: (rows) => rows.map((row) => ({ status: String(row.status), count: Number(row.count) })),
})
