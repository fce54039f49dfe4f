import { eq } from 'drizzle-orm'
import { build, toQuery, toStmt } from './build'
import type { Query, Stmt } from './db'
import { feed } from './schema'

/** The studio's one calendar address, by the hash of its secret. */
export type FeedRow = { readonly id: number; readonly hash: string; readonly createdAt: number }

export const selectFeed = (): Query<FeedRow> =>
  toQuery(feed, build.select().from(feed).where(eq(feed.id, 1)))

/** The feed with this secret's hash; none where it was renewed since. */
export const selectFeedByHash = (hash: string): Query<FeedRow> =>
  toQuery(feed, build.select().from(feed).where(eq(feed.hash, hash)))

/** Gives the feed a new address; the old one ends with it. */
export const renewFeed = (hash: string, at: number): Stmt =>
  toStmt(
    build
      .insert(feed)
      .values({ id: 1, hash, createdAt: at })
      .onConflictDoUpdate({ target: feed.id, set: { hash, createdAt: at } }),
  )
