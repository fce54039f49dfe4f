import { and, eq, type InferSelectModel } from 'drizzle-orm'
import { build, toQuery, toStmt } from './build'
import type { Query, Stmt } from './db'
import { freeText } from './schema'

/** Words somebody typed. Lines hold only its id, so that it can be erased. */
export type FreeText = Readonly<InferSelectModel<typeof freeText>>

/** Keeps a text. Conflict on `free_text.id` when the id is known. */
export const insertText = (row: FreeText): Stmt => toStmt(build.insert(freeText).values(row))

/** The texts of a docket. */
export const selectTexts = (docket: string): Query<FreeText> =>
  toQuery(freeText, build.select().from(freeText).where(eq(freeText.docket, docket)))

/** Removes one text of a docket. */
export const deleteText = (docket: string, id: string): Stmt =>
  toStmt(build.delete(freeText).where(and(eq(freeText.docket, docket), eq(freeText.id, id))))
