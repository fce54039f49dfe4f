import { and, eq } from 'drizzle-orm'
import { build, toStmt } from './build'
import type { Stmt } from './db'
import { erasableTables } from './personal-data'
import { access, erasing, head, idempotency, line, outbox } from './schema'

/** A line that is rewritten while its docket is being erased. */
export type LineRewrite = { readonly id: string; readonly body: unknown }

/**
 * Removes the personal data of a docket; its lines stay and keep their references. `rewrites`
 * replace line bodies that hold personal data all the same. `keyScope` is the scope under which the
 * docket's answers were kept for repeating. Delete the photos' bytes after, and scrub a file.
 */
export const erasePersonalData = (
  docket: string,
  now: number,
  options: { readonly rewrites?: readonly LineRewrite[]; readonly keyScope?: string } = {},
): readonly Stmt[] => [
  ...whileErasing(
    docket,
    (options.rewrites ?? []).map((each) => rewriteLine(docket, each)),
  ),
  ...erasableTables.map((table) => toStmt(build.delete(table).where(eq(table.docket, docket)))),
  toStmt(build.update(access).set({ revokedAt: now, label: '' }).where(eq(access.docket, docket))),
  toStmt(build.delete(outbox).where(eq(outbox.docket, docket))),
  ...(options.keyScope === undefined ? [] : [deleteKeys(options.keyScope)]),
  toStmt(build.update(head).set({ person: null, updatedAt: now }).where(eq(head.docket, docket))),
]

/** Removes a docket with all that belongs to it, as if it had never been. */
export const eraseDocket = (docket: string): readonly Stmt[] => [
  ...whileErasing(docket, [toStmt(build.delete(line).where(eq(line.docket, docket)))]),
  ...[...erasableTables, access, outbox].map((table) =>
    toStmt(build.delete(table).where(eq(table.docket, docket))),
  ),
  toStmt(build.delete(head).where(eq(head.docket, docket))),
]

// The row opens the triggers for this docket and is gone again before the batch commits.
const whileErasing = (docket: string, stmts: readonly Stmt[]): readonly Stmt[] =>
  stmts.length === 0
    ? []
    : [
        toStmt(build.insert(erasing).values({ docket })),
        ...stmts,
        toStmt(build.delete(erasing).where(eq(erasing.docket, docket))),
      ]

const rewriteLine = (docket: string, { id, body }: LineRewrite): Stmt =>
  toStmt(
    build
      .update(line)
      .set({ body })
      .where(and(eq(line.docket, docket), eq(line.id, id))),
  )

const deleteKeys = (scope: string): Stmt =>
  toStmt(build.delete(idempotency).where(eq(idempotency.scope, scope)))
