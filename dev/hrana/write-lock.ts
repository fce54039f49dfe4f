/** Who may write: one stream at a time, the others wait in order without blocking the process. */
export type WriteLock = {
  /** Resolves once `owner` holds the lock; at once when it does already. */
  take(owner: object): Promise<void>
  /** Passes the lock on; nothing happens when `owner` does not hold it. */
  release(owner: object): void
}

export const createWriteLock = (): WriteLock => {
  let holder: object | undefined
  const waiting: { readonly owner: object; readonly start: () => void }[] = []
  return {
    take: (owner) => {
      if (holder === undefined || holder === owner) {
        holder = owner
        return Promise.resolve()
      }
      return new Promise((start) => {
        waiting.push({ owner, start })
      })
    },
    release: (owner) => {
      if (holder !== owner) return
      const next = waiting.shift()
      holder = next?.owner
      next?.start()
    },
  }
}

/** Whether a statement takes SQLite's write lock when it runs. */
export const takesWriteLock = (sql: string): boolean => {
  const [first = '', second = ''] = sql
    .trim()
    .toUpperCase()
    .split(/[\s;(]+/)
  if (first === 'BEGIN') return second === 'IMMEDIATE' || second === 'EXCLUSIVE'
  if (first === 'WITH') return /\b(INSERT|UPDATE|DELETE|REPLACE)\b/i.test(sql)
  return !readingWords.has(first)
}

const readingWords = new Set([
  ...['SELECT', 'VALUES', 'EXPLAIN', 'PRAGMA', 'COMMIT', 'END', 'ROLLBACK', 'SAVEPOINT', 'RELEASE'],
])
