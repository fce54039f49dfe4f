import { cp } from 'node:fs/promises'
import { dataPaths } from '../src/store/data-dir'
import { type BackupReport, checkBackup } from './check-backup'
import { requireEmpty } from './empty-folder'
import { runScript } from './run-script'

/**
 * Puts a backup into an empty (or new) data folder, never over one that is in use. Checks the backup
 * before and the copy after. Throws when a check fails.
 */
export const restore = async (from: string, to: string): Promise<BackupReport> => {
  await checkBackup(from)
  await requireEmpty(to)
  const source = dataPaths(from)
  const target = dataPaths(to)
  await cp(source.database, target.database)
  await cp(source.photos, target.photos, { recursive: true }).catch(ignoreMissing)
  return checkBackup(to)
}

const ignoreMissing = (error: unknown) => {
  if ((error as { code?: unknown }).code !== 'ENOENT') throw error
}

runScript(import.meta.url, async () => {
  const [, , from, to = process.env.DATA_DIR ?? 'data'] = process.argv
  if (from === undefined) throw new Error('usage: restore <backup folder> [empty data folder]')
  console.log(await restore(from, to))
})
