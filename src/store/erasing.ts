import { and, eq, sql } from 'drizzle-orm'
import { build, toStmt } from './build'
import type { Stmt } from './db'
import type { StoredEstimate } from './estimates'
import { erasableTables } from './personal-data'
import { access, erasing, estimate, head, idempotency, line, outbox } from './schema'

/** A line that is rewritten while its docket is being erased. */
export type LineRewrite = { readonly id: string; readonly body: unknown }

/**
 * Removes the personal data of a docket; its lines stay and keep their references. `rewrites`
 * replace line bodies that hold personal data all the same, `estimates` those that do. Answers kept
 * for repeating go with it. Delete the photos' bytes after, and scrub a file.
 */
export const erasePersonalData = (
  docket: string,
  now: number,
  options: {
    readonly rewrites?: readonly LineRewrite[]
    readonly estimates?: readonly StoredEstimate[]
  } = {},
): readonly Stmt[] => [
  ...whileErasing(
    docket,
    (options.rewrites ?? []).map((each) => rewriteLine(docket, each)),
  ),
  ...erasableTables.map((table) => toStmt(build.delete(table).where(eq(table.docket, docket)))),
  toStmt(build.update(access).set({ revokedAt: now, label: '' }).where(eq(access.docket, docket))),
  toStmt(build.delete(outbox).where(eq(outbox.docket, docket))),
  ...(options.estimates ?? []).flatMap(replaceEstimate),
  deleteKeysOf(docket),
  toStmt(build.update(head).set({ person: null, updatedAt: now }).where(eq(head.docket, docket))),
]

/** Removes a docket with all that belongs to it, as if it had never been. */
export const eraseDocket = (docket: string): readonly Stmt[] => [
  ...whileErasing(docket, [toStmt(build.delete(line).where(eq(line.docket, docket)))]),
  ...[...erasableTables, access, outbox].map((table) =>
    toStmt(build.delete(table).where(eq(table.docket, docket))),
  ),
  deleteKeysOf(docket),
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

// An estimate is never changed, so the row gives way to one under the same digest.
const replaceEstimate = (row: StoredEstimate): readonly Stmt[] => [
  toStmt(build.delete(estimate).where(eq(estimate.digest, row.digest))),
  toStmt(build.insert(estimate).values(row)),
]

// The scope of a kept answer names the parts of its path, the docket among them.
const deleteKeysOf = (docket: string): Stmt =>
  toStmt(build.delete(idempotency).where(sql`instr(${idempotency.scope}, ${docket}) > 0`))
