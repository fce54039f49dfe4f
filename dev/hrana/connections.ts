import Database from 'libsql'

/** Connections that are used again: a fresh one has to read the whole schema first. */
export type Connections = {
  take(): Database.Database
  /** Gives one back, out of any transaction. */
  give(db: Database.Database): void
  closeAll(): void
}

export const createConnections = (file: string): Connections => {
  const idle: Database.Database[] = []
  return {
    take: () => idle.pop() ?? new Database(file),
    give: (db) => {
      idle.push(db)
    },
    closeAll: () => {
      for (const db of idle.splice(0)) db.close()
    },
  }
}
