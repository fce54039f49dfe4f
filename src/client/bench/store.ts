import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { Carried } from '../../pages/bench/carried'
import type { SheetWords } from '../../pages/bench/sheet-words'
import type { LineStore, Queued } from './queue'

export const DATABASE = 'bench'

/** A sheet as it was brought, with the name of the words it is shown in. */
export type KeptSheet = {
  readonly carried: Carried
  readonly words: string
  readonly broughtAt: number
}
export type KeptWords = SheetWords & { readonly tag: string }

interface Schema extends DBSchema {
  lines: { key: string; value: Queued }
  sheets: { key: string; value: KeptSheet }
  words: { key: string; value: KeptWords }
  meta: { key: string; value: string | number }
}
export type Database = IDBPDatabase<Schema>

export const openDatabase = (): Promise<Database> =>
  openDB<Schema>(DATABASE, 1, {
    upgrade: (db) => {
      db.createObjectStore('lines', { keyPath: 'id' })
      db.createObjectStore('sheets')
      db.createObjectStore('words', { keyPath: 'tag' })
      db.createObjectStore('meta')
    },
    // A newer page of ours waits for nobody: this one opens the database again when it needs it.
    blocking: (_now, _next, event) => (event.target as IDBDatabase).close(),
  })

/** A name nobody else draws; a page without https has no randomUUID. */
export const newId = (): string => {
  const bytes = crypto.getRandomValues(new Uint8Array(16))
  return Array.from(bytes, (b) => b.toString(16).padStart(2, '0')).join('')
}

const inOrder = (lines: readonly Queued[]): readonly Queued[] =>
  [...lines].sort((a, b) => a.n - b.n)

/** All lines of this device that the studio has not confirmed, refused ones among them. */
export const allLines = async (db: Database): Promise<readonly Queued[]> =>
  inOrder(await db.getAll('lines'))

/** Not sent and not refused. */
export const waits = (line: Queued): boolean => line.refused === undefined && !line.sent

export const lineStore = (db: Database): LineStore => ({
  add: async (lines) => {
    // One transaction: neither two pages nor a page killed half way give a number twice.
    const tx = db.transaction(['lines', 'meta'], 'readwrite', { durability: 'strict' })
    const meta = tx.objectStore('meta')
    const device = String((await meta.get('device')) ?? newId())
    let n = Number((await meta.get('n')) ?? 0)
    for (const line of lines) {
      n += 1
      await tx.objectStore('lines').put({ ...line, device, n })
    }
    await meta.put(device, 'device')
    await meta.put(n, 'n')
    await tx.done
  },
  waiting: async () => (await allLines(db)).filter(waits),
  arrived: async (ids) => {
    const tx = db.transaction('lines', 'readwrite')
    for (const id of ids) {
      const line = await tx.store.get(id)
      if (line) await tx.store.put({ ...line, sent: true })
    }
    await tx.done
  },
  refuse: async (id, why) => {
    const tx = db.transaction('lines', 'readwrite')
    const line = await tx.store.get(id)
    if (line) await tx.store.put({ ...line, refused: why })
    await tx.done
  },
  pictured: async (id, photo) => {
    const tx = db.transaction('lines', 'readwrite')
    const line = await tx.store.get(id)
    if (line) {
      const { picture: _, ...rest } = line
      await tx.store.put({ ...rest, body: { ...line.body, photo } })
    }
    await tx.done
  },
})

/** Empties the device of all it keeps. */
export const clearAll = async (db: Database): Promise<void> => {
  const tx = db.transaction(['lines', 'sheets', 'words', 'meta'], 'readwrite')
  for (const name of tx.objectStoreNames) await tx.objectStore(name).clear()
  await tx.done
}

/** Refused lines are sent once more. */
export const tryAgain = async (db: Database, id: string): Promise<void> => {
  const tx = db.transaction('lines', 'readwrite')
  const line = await tx.store.get(id)
  if (line) {
    const { refused: _, ...rest } = line
    await tx.store.put(rest)
  }
  await tx.done
}

/**
 * Keeps a sheet as it was brought, unless a later one is here, and lets go of the lines it holds: in
 * one step, so that a line is always in one of the two.
 */
export const keepSheet = async (db: Database, sheet: KeptSheet): Promise<void> => {
  const tx = db.transaction(['sheets', 'lines'], 'readwrite')
  const { id, rev, lines } = sheet.carried
  const was = await tx.objectStore('sheets').get(id)
  if (was === undefined || was.carried.rev <= rev) {
    await tx.objectStore('sheets').put(sheet, id)
    for (const line of lines) await tx.objectStore('lines').delete(line.id)
  }
  await tx.done
}

/** Sheets are kept for so many days after they were last brought. */
const KEEP_MS = 30 * 86_400_000

/** Lets go of sheets nobody opened for long, and of what was sent to them; what waits stays. */
export const dropOldSheets = async (db: Database, now: number): Promise<readonly string[]> => {
  const tx = db.transaction(['sheets', 'lines'], 'readwrite')
  const sheets = tx.objectStore('sheets')
  const gone: string[] = []
  for (const key of await sheets.getAllKeys()) {
    const kept = await sheets.get(key)
    if (kept === undefined || now - kept.broughtAt <= KEEP_MS) continue
    gone.push(key)
    await sheets.delete(key)
  }
  for (const line of await tx.objectStore('lines').getAll())
    if (line.sent && gone.includes(line.docket)) await tx.objectStore('lines').delete(line.id)
  await tx.done
  return gone
}
