import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { readOne } from '../../src/store/db'
import { type FileDb, openFileDb } from '../../src/store/file'
import { selectHead, upsertHead } from '../../src/store/heads'
import { insertLines, selectMaxSeq } from '../../src/store/lines'
import { migrate } from '../../src/store/migrate'
import { insertText } from '../../src/store/texts'
import { raw } from './contract'
import { longMigrations } from './long-migrations'
import { aHead, aLine } from './rows'
import { makeFolder } from './stores'

let folder: string
let remove: () => void
beforeEach(() => {
  ;({ folder, remove } = makeFolder())
})
afterEach(() => remove())

const child = fileURLToPath(new URL('migrate-child.ts', import.meta.url))

/** Kills a process in the middle of its migrations once it has said `count` of them. */
const killMigrating = (path: string, count: number): Promise<number> =>
  new Promise((resolve, reject) => {
    const args = ['--import', 'tsx', child, path]
    const migrating = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] })
    let said = ''
    const last = () => Number(said.split('\n').at(-2) ?? 0)
    migrating.stdout.setEncoding('utf8').on('data', (chunk: string) => {
      said += chunk
      if (last() >= count) migrating.kill('SIGKILL')
    })
    migrating.on('error', reject)
    migrating.on('close', (code, signal) =>
      signal === 'SIGKILL' ? resolve(last()) : reject(new Error(`ended by itself: ${code}`)),
    )
  })

it('a server killed while it migrates goes on where it was: each step whole or not at all', {
  timeout: 120_000,
}, async () => {
  const path = join(folder, 'killed.db')
  for (const count of [1, 12, 40]) {
    const said = await killMigrating(path, count)
    const db = await openFileDb(path)
    const [log = [], tables = [], sound = []] = await db.read([
      raw('SELECT n FROM migration ORDER BY n'),
      raw(`SELECT name FROM sqlite_schema WHERE name GLOB 'step_*' AND type = 'table'`),
      raw('PRAGMA integrity_check'),
    ])
    expect(log.length).toBeGreaterThanOrEqual(said)
    expect(said).toBeGreaterThan(0)
    expect(log.length).toBeLessThan(longMigrations.length)
    expect(tables).toHaveLength(log.length)
    const counts = await db.read(log.map(({ n }) => raw(`SELECT count(*) AS n FROM step_${n}`)))
    expect(counts.flat().every((row) => row.n === 2000)).toBe(true)
    expect(sound).toEqual([{ integrity_check: 'ok' }])
    await db.close()
  }
  const db = await openFileDb(path)
  const first = (await db.read([raw('SELECT count(*) AS n FROM migration')]))[0]?.[0]?.n
  const rest = await migrate(db, 2, longMigrations.slice(0, Number(first) + 3))
  expect(rest).toHaveLength(3)
  await db.close()
})

describe('a file that takes no more', () => {
  let db: FileDb
  const batch = (n: number, text: string) => [
    upsertHead(aHead('d1', { rev: n })),
    insertLines('d1', n - 1, [aLine(`line-${n}`)]),
    insertText({ id: `text-${n}`, docket: 'd1', field: 'note', text }),
  ]
  beforeEach(async () => {
    db = await openFileDb(join(folder, 'full.db'))
    await migrate(db, 1)
    await db.write(batch(1, 'first'))
  })
  afterEach(() => db.close())

  const whole = async (lines: number): Promise<void> => {
    expect(await readOne(db, selectMaxSeq('d1'))).toBe(lines)
    expect((await readOne(db, selectHead('d1')))?.rev).toBe(lines)
    const [texts = []] = await db.read([raw('SELECT id FROM free_text')])
    expect(texts).toHaveLength(lines)
  }

  // SQLite answers a full disk and a file at its page limit alike: SQLITE_FULL.
  it('because the disk is full says so, keeps what it had, and goes on once there is room', async () => {
    const [[pages] = []] = await db.read([raw('PRAGMA page_count')])
    await db.read([raw(`PRAGMA max_page_count = ${Number(pages?.page_count) + 2}`)])
    const full = db.write(batch(2, 'x'.repeat(200_000)))
    await expect(full).rejects.toMatchObject({ code: 'unavailable' })
    await whole(1)
    await db.read([raw('PRAGMA max_page_count = 1000000')])
    await db.write(batch(2, 'y'.repeat(200_000)))
    await whole(2)
  })

  // A file that may not be written and a connection told so answer alike: SQLITE_READONLY.
  it('because it is read-only says so, and can still be read', async () => {
    await db.read([raw('PRAGMA query_only = ON')])
    await expect(db.write(batch(2, 'second'))).rejects.toMatchObject({ code: 'unavailable' })
    await whole(1)
    await db.read([raw('PRAGMA query_only = OFF')])
    await db.write(batch(2, 'second'))
    await whole(2)
  })
})
