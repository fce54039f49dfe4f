import type { Db } from '../../src/store/db'

/** A database that counts its read and write batches into `counts`. */
export const countingDb = (db: Db, counts: { reads: number; writes: number }): Db => ({
  read: (stmts) => {
    counts.reads += 1
    return db.read(stmts)
  },
  write: (stmts, options) => {
    counts.writes += 1
    return db.write(stmts, options)
  },
  ...(db.scrub ? { scrub: db.scrub } : {}),
  close: () => db.close(),
})
