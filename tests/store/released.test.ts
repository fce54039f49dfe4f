import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { gunzipSync } from 'node:zlib'
import { afterAll, describe, expect, it } from 'vitest'
import { fold } from '../../src/docket/fold'
import { kinds, type LineKind } from '../../src/docket/kinds'
import { readAll } from '../../src/store/db'
import { openFileDb } from '../../src/store/file'
import { selectLines } from '../../src/store/lines'
import { migrate, pendingMigrations } from '../../src/store/migrate'
import { raw } from './contract'
import { makeFolder } from './stores'

const fixtures = new URL('../fixtures/', import.meta.url)
const released = readdirSync(fixtures).filter((name) => name.endsWith('.db.gz'))
const { folder, remove } = makeFolder()
afterAll(remove)

it('there is a database of the first schema to begin with', () => {
  expect(released).toContain('schema-0001.db.gz')
})

describe.each(released)('%s', (name) => {
  const path = join(folder, name.replace('.gz', ''))
  writeFileSync(path, gunzipSync(readFileSync(new URL(name, fixtures))))
  const wanted = JSON.parse(
    readFileSync(new URL(name.replace('.db.gz', '.json'), fixtures), 'utf8'),
  ) as Readonly<Record<string, object>>

  it('opens, migrates, is sound, and folds to the dockets it folded to then', async () => {
    const db = await openFileDb(path)
    await migrate(db, Date.UTC(2027, 0, 1))
    expect(await pendingMigrations(db)).toBe(0)
    const [sound, dangling] = await db.read([
      raw('PRAGMA integrity_check'),
      raw('PRAGMA foreign_key_check'),
    ])
    expect([sound, dangling]).toEqual([[{ integrity_check: 'ok' }], []])
    const ids = Object.keys(wanted)
    expect(ids.length).toBeGreaterThan(3)
    const lines = await readAll(
      db,
      ids.map((id) => selectLines(id)),
    )
    for (const [i, id] of ids.entries()) {
      const all = lines[i] ?? []
      expect(all.length, id).toBeGreaterThan(10)
      for (const { kind, body } of all)
        expect(kinds[kind as LineKind].safeParse(body).success, kind).toBe(true)
      // What a later program adds may stand beside it; what was there is as it was.
      expect(JSON.parse(JSON.stringify(fold(all))), id).toMatchObject(wanted[id] ?? {})
    }
    await db.close()
  })
})
