import { copyFileSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { erasePersonalData } from '../../src/store/erasing'
import { openFileDb } from '../../src/store/file'
import { listHeads, upsertHead } from '../../src/store/heads'
import { migrate } from '../../src/store/migrate'
import { upsertPerson } from '../../src/store/people'
import { insertText } from '../../src/store/texts'
import { dbErrorOf, raw } from './contract'
import { aHead, aPerson } from './rows'
import { makeFolder } from './stores'

const withFolder = async (work: (folder: string) => Promise<void>) => {
  const { folder, remove } = makeFolder()
  await work(folder).finally(remove)
}
const bytesOf = (folder: string) =>
  readdirSync(folder)
    .map((file) => readFileSync(join(folder, file), 'latin1'))
    .join('')

describe('a database in a file', () => {
  it('is durable and checks references on its connection', () =>
    withFolder(async (folder) => {
      const db = await openFileDb(join(folder, 'a.db'))
      await db.write([raw('CREATE TABLE t (x)')])
      await dbErrorOf(db.write([raw('SELEC')]))
      const names = ['journal_mode', 'synchronous', 'foreign_keys', 'secure_delete']
      const values = (await db.read(names.map((name) => raw(`PRAGMA ${name}`)))).flat()
      expect(values.map((row) => Object.values(row)[0])).toEqual(['wal', 2, 1, 1])
      await db.close()
    }))

  it('cannot be opened where there is no folder', () =>
    withFolder(async (folder) => {
      const error = await dbErrorOf(openFileDb(join(folder, 'none', 'a.db')))
      expect(error.code).toBe('unavailable')
    }))

  it('that is not a database is unavailable', () =>
    withFolder(async (folder) => {
      const path = new URL(import.meta.url).pathname
      copyFileSync(path, join(folder, 'a.db'))
      expect((await dbErrorOf(openFileDb(join(folder, 'a.db')))).code).toBe('unavailable')
    }))

  it('finds the pages of its lists by an index, without sorting', () =>
    withFolder(async (folder) => {
      const db = await openFileDb(join(folder, 'a.db'))
      await migrate(db, 1)
      const after = { sortAt: 5, docket: 'd' }
      for (const options of [
        { turn: 'ours', after, limit: 9 },
        { after, limit: 9 },
        { limit: 9 },
      ]) {
        const { sql, args } = listHeads(options).stmt
        const [plan = []] = await db.read([{ sql: `EXPLAIN QUERY PLAN ${sql}`, args }])
        const steps = plan.map((row) => String(row.detail)).join('; ')
        expect(steps).toMatch(/head USING INDEX head_by_(turn|time)/)
        expect(steps).not.toMatch(/TEMP B-TREE/)
      }
      await db.close()
    }))

  it('holds nothing of an erased person after a scrub, in any of its files', () =>
    withFolder(async (folder) => {
      const db = await openFileDb(join(folder, 'a.db'))
      await migrate(db, 1)
      const canaries = ['Canary Name', 'canary@example.org', '+99 canary phone', 'canary words']
      const [name, email, phone, text] = canaries as [string, string, string, string]
      await db.write([
        upsertHead(aHead('d1', { person: 'p' })),
        upsertPerson(aPerson('p', 'd1', { name, email, phone })),
        insertText({ id: 't', docket: 'd1', field: 'note', text }),
      ])
      for (const canary of canaries) expect(bytesOf(folder)).toContain(canary)
      await db.write(erasePersonalData('d1', 2))
      await db.scrub()
      for (const canary of canaries) expect(bytesOf(folder)).not.toContain(canary)
      await db.close()
    }))
})

describe('the sources', () => {
  it('hold no transaction that stays open between calls', () => {
    const src = new URL('../../src/', import.meta.url).pathname
    const files = readdirSync(src, { recursive: true, encoding: 'utf8' })
    // The browser's own store is no driver of ours: there a transaction ends by itself.
    const code = files.filter((file) => /\.tsx?$/.test(file) && !file.startsWith('client/'))
    const open = (text: string) => /\.(transaction|executeMultiple)\s*\(/.test(text)
    expect(open('await client.transaction("write")')).toBe(true)
    expect(code.length).toBeGreaterThan(20)
    expect(code.filter((file) => open(readFileSync(join(src, file), 'utf8')))).toEqual([])
  })
})
