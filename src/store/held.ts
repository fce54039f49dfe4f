import type { Query } from './db'

/** A docket somebody holds a live key of, as their own list shows it. */
export type Held = {
  readonly docket: string
  readonly title: string
  readonly state: string
  readonly reference: string | null
}

/** The dockets these key hashes open at `now` (UTC ms), the latest first. */
export const selectHeld = (hashes: readonly string[], now: number): Query<Held> => ({
  stmt: {
    sql: `select h.docket, h.title, h.state, h.reference from access a join head h on h.docket = a.docket
      where a.kind = 'customer' and a.revoked_at is null
      and (a.expires_at is null or a.expires_at > ?)
      and a.hash in (select value from json_each(?)) order by h.updated_at desc, h.docket`,
    args: [now, JSON.stringify(hashes)],
  },
  map: (rows) =>
    rows.map((row) => ({
      docket: String(row.docket),
      title: String(row.title),
      state: String(row.state),
      reference: row.reference === null ? null : String(row.reference),
    })),
})
