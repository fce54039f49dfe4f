import type { Db } from '../../src/store/db'
import { openFileDb } from '../../src/store/file'
import { migrate } from '../../src/store/migrate'
import { longMigrations } from './long-migrations'

// Applies many migrations one by one, and says each number once it is kept.
const [, , path = ''] = process.argv

const main = async () => {
  const db = await openFileDb(path)
  const saying: Db = {
    ...db,
    write: async (stmts, options) => {
      const rows = await db.write(stmts, options)
      if (stmts[0]?.sql.startsWith('INSERT INTO migration'))
        process.stdout.write(`${stmts[0].args[0]}\n`)
      return rows
    },
  }
  await migrate(saying, 1, longMigrations)
  await db.close()
}

main().catch((error: unknown) => {
  console.error(error)
  process.exit(1)
})
