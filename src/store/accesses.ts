import { and, desc, eq, type InferSelectModel, inArray, isNull, ne } from 'drizzle-orm'
import { build, toQuery, toStmt } from './build'
import type { Query, Stmt } from './db'
import { type AccessKind, access, session } from './schema'

/** A key somebody holds, by the SHA-256 of it; the key itself is never kept. */
export type Access = Readonly<InferSelectModel<typeof access>>

/** Constraint of the conflict when a sign-in link has made its device already. */
export const linkUsed = 'access.parent'

/** Keeps a key. A device key names as `parent` the sign-in link it was traded for. */
export const insertAccess = (row: Access): Stmt => toStmt(build.insert(access).values(row))

/** The key with this hash, whatever became of it: see `isLive`. */
export const selectAccess = (hash: string): Query<Access> =>
  toQuery(access, build.select().from(access).where(eq(access.hash, hash)))

/** The keys of these kinds that were not revoked, latest first. */
export const selectAccesses = (kinds: readonly AccessKind[]): Query<Access> =>
  toQuery(
    access,
    build
      .select()
      .from(access)
      .where(and(inArray(access.kind, [...kinds]), isNull(access.revokedAt)))
      .orderBy(desc(access.createdAt), desc(access.hash)),
  )

/** The keys of one docket. */
export const selectDocketAccesses = (docket: string): Query<Access> =>
  toQuery(access, build.select().from(access).where(eq(access.docket, docket)))

/** Whether a key opens anything at `now`; a sign-in link does so once. */
export const isLive = (row: Access, now: number): boolean =>
  row.revokedAt === null &&
  (row.expiresAt === null || row.expiresAt > now) &&
  (row.kind !== 'signin' || row.usedAt === null)

/** Notes when a key was last used. */
export const touchAccess = (hash: string, now: number): Stmt =>
  toStmt(build.update(access).set({ usedAt: now }).where(eq(access.hash, hash)))

/** Ends a key; one that was ended before keeps its time. */
export const revokeAccess = (hash: string, now: number): Query<Access> =>
  toQuery(
    access,
    build
      .update(access)
      .set({ revokedAt: now })
      .where(and(eq(access.hash, hash), isNull(access.revokedAt)))
      .returning(),
  )

/** Ends every key to the studio but this one, with their sessions and open sign-in links. */
export const revokeOthers = (kept: string | null, now: number): readonly Stmt[] => [
  toStmt(build.delete(session).where(ne(session.access, kept ?? ''))),
  toStmt(
    build
      .update(access)
      .set({ revokedAt: now })
      .where(
        and(
          inArray(access.kind, ['owner', 'bench', 'signin']),
          ne(access.hash, kept ?? ''),
          isNull(access.revokedAt),
        ),
      ),
  ),
]

/**
 * Trades a sign-in link for a device key, in this order in one batch. The link must have been found
 * live before; a second trade of it aborts the batch as a conflict on `linkUsed`.
 */
export const tradeLink = (link: string, device: Omit<Access, 'parent'>): readonly Stmt[] => [
  touchAccess(link, device.createdAt),
  insertAccess({ ...device, parent: link }),
]
