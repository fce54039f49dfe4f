import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import { fold } from '../src/docket/fold'
import { readAll } from '../src/store/db'
import { openFileDb } from '../src/store/file'
import { selectLines } from '../src/store/lines'
import { migrations } from '../src/store/migrations'
import { prepared } from '../tests/http/stages'
import { runScript } from './run-script'

const folder = fileURLToPath(new URL('../tests/fixtures', import.meta.url))

/**
 * Keeps a database as this program leaves it, with what its dockets fold to, under the number of its
 * last migration: run it when a version is released. `tests/store/released.test.ts` opens them all.
 */
const main = async (): Promise<void> => {
  const { from, dockets } = await prepared()
  const n = String(migrations.length).padStart(4, '0')
  mkdirSync(folder, { recursive: true })
  writeFileSync(join(folder, `schema-${n}.db.gz`), gzipSync(readFileSync(from.file), { level: 9 }))
  const db = await openFileDb(from.file)
  const ids = Object.values(dockets).map((d) => d.id)
  const lines = await readAll(
    db,
    ids.map((id) => selectLines(id)),
  )
  await db.close()
  const folded = Object.fromEntries(ids.map((id, i) => [id, fold(lines[i] ?? [])]))
  writeFileSync(join(folder, `schema-${n}.json`), `${JSON.stringify(folded, null, 1)}\n`)
  console.log(`kept schema ${n}: ${ids.length} dockets`)
}

runScript(import.meta.url, main)
