import { existsSync } from 'node:fs'
import Database from 'libsql'
import { dataPaths } from '../src/store/data-dir'
import { openPhotoFolder } from '../src/store/photo-folder'

/** What a copy of a data folder holds. */
export type BackupReport = {
  readonly dockets: number
  readonly lines: number
  readonly photos: number
  /** The last migration of the database. */
  readonly schema: number
}

/** Checks a copy: the database is sound and every photo it knows is there. Throws what is wrong. */
export const checkBackup = async (folder: string): Promise<BackupReport> => {
  const { database, photos } = dataPaths(folder)
  if (!existsSync(database)) throw new Error(`${database} is not there`)
  const db = new Database(database)
  try {
    const all = (sql: string) => db.prepare(sql).all() as Record<string, unknown>[]
    const sound = all('PRAGMA integrity_check')[0]?.integrity_check
    if (sound !== 'ok') throw new Error(`${database} is damaged: ${String(sound)}`)
    const dangling = all('PRAGMA foreign_key_check').length
    if (dangling > 0) throw new Error(`${database} has ${dangling} references to nothing`)
    const keys = all('SELECT key FROM photo').map((row) => String(row.key))
    const there = new Set(await openPhotoFolder(photos).list())
    const missing = keys.filter((key) => !there.has(key))
    if (missing.length > 0) throw new Error(`${missing.length} photos are missing: ${missing[0]}`)
    const count = (of: string) => Number(all(`SELECT ${of} AS n`)[0]?.n)
    return {
      dockets: count('(SELECT count(*) FROM head)'),
      lines: count('(SELECT count(*) FROM line)'),
      photos: keys.length,
      schema: count('(SELECT max(n) FROM migration)'),
    }
  } finally {
    db.close()
  }
}
