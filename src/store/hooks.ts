import { eq, inArray } from 'drizzle-orm'
import { build, toQuery, toStmt } from './build'
import type { Query, Stmt } from './db'
import { hook, outbox } from './schema'

/** Where messages to the studio's own system go; one at most. Times ms since 1970. */
export type Hook = Readonly<typeof hook.$inferSelect>

export const selectHook = (): Query<Hook> =>
  toQuery(hook, build.select().from(hook).where(eq(hook.id, 1)))

/**
 * Sets the address with its secret. What happened before there was one is not sent after the event;
 * a renewed secret keeps the old one in use until `oldUntil`.
 */
export const setHook = (row: Omit<Hook, 'id'>): readonly Stmt[] => {
  const { createdAt: _, ...changing } = row
  return [
    toStmt(
      build
        .insert(hook)
        .values({ id: 1, ...row })
        .onConflictDoUpdate({ target: hook.id, set: changing }),
    ),
  ]
}

/**
 * Messages waiting from before there was an address count as done. They are found first: the driver
 * (libsql 0.5.29) ends the whole process on an update that walks the very index it takes rows out of.
 */
export const forgetWaiting = (): Stmt => {
  const waiting = build.select({ id: outbox.id }).from(outbox).where(eq(outbox.status, 'waiting'))
  return toStmt(build.update(outbox).set({ status: 'done' }).where(inArray(outbox.id, waiting)))
}

/** Stops sending; the address stays to be looked at. */
export const hookOff = (at: number): Stmt =>
  toStmt(build.update(hook).set({ offAt: at }).where(eq(hook.id, 1)))

export const deleteHook = (): Stmt => toStmt(build.delete(hook).where(eq(hook.id, 1)))
