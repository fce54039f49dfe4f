import { desc, eq, type InferSelectModel } from 'drizzle-orm'
import { build, toQuery, toStmt } from './build'
import type { Query, Stmt } from './db'
import { settings } from './schema'

/** One revision of the studio's settings; revisions are never changed. */
export type SettingsRevision = Readonly<InferSelectModel<typeof settings>>

/** Constraint of the conflict when somebody else saved first. */
export const settingsRevTaken = 'settings.rev'

/** Adds a revision: `rev` is the one that was read plus 1, or its batch aborts as a conflict. */
export const insertSettings = (row: SettingsRevision): Stmt =>
  toStmt(build.insert(settings).values(row))

/** The latest revision; no row before the first. */
export const selectSettings = (): Query<SettingsRevision> =>
  toQuery(settings, build.select().from(settings).orderBy(desc(settings.rev)).limit(1))

/** One revision by its number. */
export const selectSettingsRevision = (rev: number): Query<SettingsRevision> =>
  toQuery(settings, build.select().from(settings).where(eq(settings.rev, rev)))
