import type { Db, Row, Stmt } from './db'
import { isConflictOn } from './db-error'
import { migrations as embedded } from './migrations'

/** One step of the schema: `hash` is the SHA-256 of its file, in hex. */
export type Migration = {
  readonly n: number
  readonly name: string
  readonly hash: string
  readonly statements: readonly string[]
}

/** Why a database cannot be brought to this program's schema; the message says what to do. */
export class MigrationError extends Error {
  readonly code: 'gap' | 'changed' | 'newer'
  constructor(code: MigrationError['code'], message: string) {
    super(message)
    this.name = 'MigrationError'
    this.code = code
  }
}

const bare = (sql: string): Stmt => ({ sql, args: [] })
const createLog = bare(`CREATE TABLE IF NOT EXISTS migration (
  n INTEGER NOT NULL PRIMARY KEY, name TEXT NOT NULL, hash TEXT NOT NULL, at INTEGER NOT NULL
) STRICT`)
const selectLog = bare('SELECT n, name, hash FROM migration ORDER BY n')

/**
 * Applies the migrations that are missing, each as one batch, and gives their numbers. Two runs at
 * once are safe: the row in `migration` is written first and the second one collides.
 * Rejects with MigrationError (nothing was applied) or DbError. `now` is in ms since 1970.
 */
export const migrate = async (
  db: Db,
  now: number,
  migrations: readonly Migration[] = embedded,
): Promise<readonly number[]> => {
  checkNumbers(migrations)
  const [, log = []] = await db.write([createLog, selectLog])
  const done = checkLog(log, migrations)
  const applied: number[] = []
  for (const migration of migrations.slice(done)) {
    if (await apply(db, migration, now)) applied.push(migration.n)
  }
  return applied
}

/** How many migrations the database still lacks; 0 when it is ready. Rejects as `migrate` does. */
export const pendingMigrations = async (
  db: Db,
  migrations: readonly Migration[] = embedded,
): Promise<number> => {
  const exists = bare(`SELECT 1 AS found FROM sqlite_schema WHERE name = 'migration'`)
  const [found = []] = await db.read([exists])
  if (found.length === 0) return migrations.length
  const [log = []] = await db.read([selectLog])
  return migrations.length - checkLog(log, migrations)
}

const apply = async (db: Db, { n, name, hash, statements }: Migration, now: number) => {
  const record: Stmt = {
    sql: 'INSERT INTO migration (n, name, hash, at) VALUES (?, ?, ?, ?)',
    args: [n, name, hash, now],
  }
  try {
    await db.write([record, ...statements.map(bare)])
    return true
  } catch (error) {
    if (isConflictOn(error, 'migration.n')) return false
    throw error
  }
}

const checkNumbers = (migrations: readonly Migration[]) => {
  migrations.forEach(({ n, name }, index) => {
    if (n === index + 1) return
    throw new MigrationError('gap', `migration ${n} (${name}) stands where ${index + 1} must be`)
  })
}

const checkLog = (log: readonly Row[], migrations: readonly Migration[]): number => {
  log.forEach((row, index) => {
    if (row.n !== index + 1) {
      throw new MigrationError('gap', `the database has migration ${row.n} but not ${index + 1}`)
    }
    const ours = migrations[index]
    if (ours === undefined) {
      const message = `the database is newer than this program: it has migration ${row.n} (${row.name}), the program ends at ${migrations.length}; start a newer version`
      throw new MigrationError('newer', message)
    }
    if (row.hash !== ours.hash) {
      const message = `migration ${ours.n} (${ours.name}) was changed after it was applied: restore its file, put the change in a new one`
      throw new MigrationError('changed', message)
    }
  })
  return log.length
}
