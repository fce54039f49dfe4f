import Database from 'libsql'

/** Another server works on the same data folder. */
export class LockedError extends Error {
  constructor(path: string) {
    super(
      `another server is using this data folder (${path} is locked): stop it, or set DATA_DIR to another folder`,
    )
    this.name = 'LockedError'
  }
}

/**
 * Takes the lock of a data folder for this process, by an open exclusive transaction on a database
 * of its own. The system frees it when the process ends, however it ends. Throws LockedError when it
 * is held. Nothing else may open the file in this process: closing it would free the lock.
 */
export const takeLock = (path: string): { readonly release: () => void } => {
  const db = new Database(path)
  try {
    db.exec('BEGIN EXCLUSIVE')
  } catch (error) {
    db.close()
    if ((error as { code?: unknown }).code === 'SQLITE_BUSY') throw new LockedError(path)
    throw error
  }
  return { release: () => db.close() }
}
