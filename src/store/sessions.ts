import { and, eq, gt, type InferSelectModel, lte } from 'drizzle-orm'
import { build, toQuery, toStmt } from './build'
import type { Query, Stmt } from './db'
import { session } from './schema'

/** A browser that is signed in, by the SHA-256 of its cookie. */
export type Session = Readonly<InferSelectModel<typeof session>>

/** Keeps a session of an access that stands already. */
export const insertSession = (row: Session): Stmt => toStmt(build.insert(session).values(row))

/** The session with this hash if it has not ended at `now` nor been idle since `seenAfter`. */
export const selectSession = (hash: string, now: number, seenAfter = 0): Query<Session> =>
  toQuery(
    session,
    build
      .select()
      .from(session)
      .where(
        and(eq(session.hash, hash), gt(session.expiresAt, now), gt(session.seenAt, seenAfter)),
      ),
  )

/** Notes when a session was last seen. */
export const touchSession = (hash: string, now: number): Stmt =>
  toStmt(build.update(session).set({ seenAt: now }).where(eq(session.hash, hash)))

/** Signs one browser out. */
export const deleteSession = (hash: string): Stmt =>
  toStmt(build.delete(session).where(eq(session.hash, hash)))

/** Signs out every browser of a key. */
export const deleteSessionsOf = (accessHash: string): Stmt =>
  toStmt(build.delete(session).where(eq(session.access, accessHash)))

/** Removes sessions that have ended. */
export const deleteEndedSessions = (now: number): Stmt =>
  toStmt(build.delete(session).where(lte(session.expiresAt, now)))
