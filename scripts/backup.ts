import { existsSync } from 'node:fs'
import Database from 'libsql'
import { dataPaths } from '../src/store/data-dir'
import { openPhotoFolder } from '../src/store/photo-folder'
import { type BackupReport, checkBackup } from './check-backup'
import { requireEmpty } from './empty-folder'
import { runScript } from './run-script'

/**
 * Copies a data folder into an empty (or new) one while the server runs, and checks the copy. The
 * database first: every photo it knows is in the folder by then. Throws when a check fails.
 */
export const backup = async (from: string, to: string): Promise<BackupReport> => {
  const source = dataPaths(from)
  const target = dataPaths(to)
  // The driver would make an empty database where there is none.
  if (!existsSync(source.database)) throw new Error(`${source.database} is not there`)
  await requireEmpty(to)
  copyDatabase(source.database, target.database)
  const photos = openPhotoFolder(source.photos)
  const copies = openPhotoFolder(target.photos)
  for (const key of await photos.list()) {
    const bytes = await photos.get(key)
    if (bytes !== null) await copies.put(key, bytes, '')
  }
  return checkBackup(to)
}

const copyDatabase = (from: string, to: string) => {
  const db = new Database(from, { timeout: 5000 } as Database.Options)
  try {
    db.prepare('VACUUM INTO ?').run(to)
  } finally {
    db.close()
  }
}

runScript(import.meta.url, async () => {
  const [, , to, from = process.env.DATA_DIR ?? 'data'] = process.argv
  if (to === undefined) throw new Error('usage: backup <empty folder> [data folder]')
  console.log(await backup(from, to))
})
