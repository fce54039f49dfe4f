import { copyFileSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'libsql'
import { openFileDb } from '../../src/store/file'
import { migrate } from '../../src/store/migrate'

let base: Promise<string> | undefined

const makeBase = async (): Promise<string> => {
  const folder = mkdtempSync(join(tmpdir(), 'jambside-base-'))
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }))
  const file = join(folder, 'migrated.db')
  const db = await openFileDb(file)
  await migrate(db, 1)
  await db.close()
  // One whole file: what stands in the write-ahead log would be missing in a copy.
  const whole = join(folder, 'base.db')
  const raw = new Database(file)
  raw.exec(`VACUUM INTO '${whole}'`)
  raw.close()
  return whole
}

/** Copies a database with every migration applied to `file`; it is migrated once per process. */
export const copyBase = async (file: string): Promise<void> => {
  base ??= makeBase()
  copyFileSync(await base, file)
}
