import Database from 'libsql'

/** How each column of a copied row differs from the original; columns not named are copied. */
const CHANGED: Readonly<Record<string, string>> = {
  docket: "docket || '-' || k.copy",
  id: "id || '-' || k.copy",
  person: "person || '-' || k.copy",
  hash: "hash || '-' || k.copy",
  digest: "digest || '-' || k.copy",
  reference: "reference || '-' || k.copy",
  dedupe: "dedupe || '-' || k.copy",
  parent: 'NULL',
  // Spread over the years before, so that no two stand at one moment.
  sort_at: 'sort_at - k.copy * 7919000',
}

const TABLES = ['head', 'line', 'person', 'free_text', 'photo', 'estimate', 'access'] as const

/**
 * Copies every docket of a database file under other ids until there are at least `dockets`, so that
 * each is of realistic shape. The rows of a table that belong to no docket (devices) are not copied.
 * Returns how many dockets there are now.
 */
export const multiply = (file: string, dockets: number): number => {
  const db = new Database(file)
  try {
    db.exec('PRAGMA synchronous = OFF')
    const count = (): number => {
      const [row] = db.prepare('SELECT count(*) AS n FROM head').all() as { n: number }[]
      return row?.n ?? 0
    }
    const copies = Math.ceil(dockets / count()) - 1
    if (copies > 0) {
      db.exec('BEGIN')
      for (const table of TABLES) {
        const columns = (db.pragma(`table_info(${table})`) as { name: string }[]).map((c) => c.name)
        const quoted = columns.map((c) => `"${c}"`).join(', ')
        const values = columns.map((c) => CHANGED[c] ?? `"${c}"`).join(', ')
        const own = table === 'access' ? 'WHERE t.docket IS NOT NULL' : ''
        db.exec(
          `INSERT INTO ${table} (${quoted})
           WITH RECURSIVE k (copy) AS (SELECT 1 UNION ALL SELECT copy + 1 FROM k WHERE copy < ${copies})
           SELECT ${values} FROM (SELECT * FROM ${table}) t, k ${own}`,
        )
      }
      db.exec('COMMIT')
    }
    return count()
  } finally {
    db.close()
  }
}
