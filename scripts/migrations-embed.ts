import { createHash } from 'node:crypto'
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { splitStatements } from '../src/store/split-statements'
import { runScript } from './run-script'

const root = fileURLToPath(new URL('..', import.meta.url))
const target = join(root, 'src/store/migrations.ts')

/**
 * The text of src/store/migrations.ts for a folder of `0001_name.sql` files. Throws on a file name
 * that does not fit and on a gap in the numbers.
 */
export const embedMigrations = (folder = join(root, 'migrations')): string => {
  const files = readdirSync(folder).filter((file) => file.endsWith('.sql'))
  const migrations = files.sort().map((file, index) => {
    const [, digits, name] = /^(\d{4})_([a-z0-9-]+)\.sql$/.exec(file) ?? []
    if (Number(digits) !== index + 1) throw new Error(`${file}: expected number ${index + 1}`)
    const script = readFileSync(join(folder, file), 'utf8')
    const hash = createHash('sha256').update(script).digest('hex')
    return { n: index + 1, name, hash, statements: splitStatements(script) }
  })
  return `// Generated from migrations/ by \`npx tsx scripts/migrations-embed.ts\`: do not edit.
import type { Migration } from './migrate'

export const migrations: readonly Migration[] = ${JSON.stringify(migrations, null, 2)}
`
}

runScript(import.meta.url, () => {
  writeFileSync(target, embedMigrations())
  console.log(`wrote ${target}`)
})
