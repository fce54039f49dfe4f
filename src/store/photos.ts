import { and, asc, eq, type InferSelectModel } from 'drizzle-orm'
import { build, toQuery, toStmt } from './build'
import type { Query, Stmt } from './db'
import { photo } from './schema'

/** What is known of a photo; its bytes are in the photo store under `key`. Sizes in bytes, pixels. */
export type Photo = Readonly<InferSelectModel<typeof photo>>

/** Keeps a photo's row. Put the bytes into the photo store before. */
export const insertPhoto = (row: Photo): Stmt => toStmt(build.insert(photo).values(row))

/** The photos of a docket, oldest first. */
export const selectPhotos = (docket: string): Query<Photo> =>
  toQuery(
    photo,
    build
      .select()
      .from(photo)
      .where(eq(photo.docket, docket))
      .orderBy(asc(photo.at), asc(photo.id)),
  )

/** One photo of a docket. */
export const selectPhoto = (docket: string, id: string): Query<Photo> =>
  toQuery(photo, build.select().from(photo).where(one(docket, id)))

/** Removes a photo's row and gives it back; delete the bytes after the batch is through. */
export const deletePhoto = (docket: string, id: string): Query<Photo> =>
  toQuery(photo, build.delete(photo).where(one(docket, id)).returning())

const one = (docket: string, id: string) => and(eq(photo.docket, docket), eq(photo.id, id))
