import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { getTableConfig, type SQLiteTable } from 'drizzle-orm/sqlite-core'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { embedMigrations } from '../../scripts/migrations-embed'
import type { Db } from '../../src/store/db'
import { type Migration, MigrationError, migrate, pendingMigrations } from '../../src/store/migrate'
import { migrations } from '../../src/store/migrations'
import { nobodysData, personalData } from '../../src/store/personal-data'
import * as schema from '../../src/store/schema'
import { raw } from './contract'
import { makeFileStore, makeHttpStore, type TestStore } from './stores'

const root = new URL('../../', import.meta.url)
const step = (n: number, sql: string, hash = `h${n}`): Migration => ({
  n,
  name: `step-${n}`,
  hash,
  statements: [sql],
})
const [one, two] = [step(1, 'CREATE TABLE a (x)'), step(2, 'CREATE TABLE b (x)')]

describe('the embedded migrations', () => {
  it('are those of the folder', () => {
    const file = new URL('src/store/migrations.ts', root)
    expect(existsSync(file)).toBe(true)
    expect(readFileSync(file, 'utf8')).toBe(embedMigrations())
  })

  it('have no cascades, and tables are strict', () => {
    for (const file of readdirSync(new URL('migrations/', root))) {
      const sql = readFileSync(new URL(`migrations/${file}`, root), 'utf8').replace(/--.*/g, '')
      expect(sql).not.toMatch(/ON DELETE CASCADE/i)
      const tables = sql.match(/CREATE TABLE[^;]*;/g) ?? []
      expect(tables.length).toBeGreaterThan(0)
      for (const table of tables) expect(table).toMatch(/\) STRICT(, WITHOUT ROWID)?;$/)
    }
  })
})

describe.each([
  ['a file', makeFileStore],
  ['HTTP', () => makeHttpStore()],
] as const)('migrate over %s', (_, makeStore) => {
  let store: TestStore
  let db: Db
  beforeEach(async () => {
    store = await makeStore()
    db = store.db
  })
  afterEach(() => store.dispose())
  const codeOf = async (list: readonly Migration[]) => {
    const error = await migrate(db, 1, list).catch((e: unknown) => e)
    expect(error).toBeInstanceOf(MigrationError)
    return (error as MigrationError).code
  }

  it('applies what is missing, once', async () => {
    expect(await pendingMigrations(db, [one, two])).toBe(2)
    expect(await migrate(db, 5, [one])).toEqual([1])
    expect(await pendingMigrations(db, [one, two])).toBe(1)
    expect(await migrate(db, 6, [one, two])).toEqual([2])
    expect(await migrate(db, 7, [one, two])).toEqual([])
    const [log] = await db.read([raw('SELECT n, hash, at FROM migration')])
    expect(log).toEqual([
      { n: 1, hash: 'h1', at: 5 },
      { n: 2, hash: 'h2', at: 6 },
    ])
  })

  it('lets two runs at once pass: each step is applied by one of them', async () => {
    const runs = await Promise.all([migrate(db, 1, [one, two]), migrate(db, 1, [one, two])])
    expect(runs.flat().sort()).toEqual([1, 2])
  })

  it('leaves nothing of a step that fails', async () => {
    const broken = { ...two, statements: ['CREATE TABLE b (x)', 'CREATE TABLE b (x)'] }
    await expect(migrate(db, 1, [one, broken])).rejects.toMatchObject({ statementIndex: 2 })
    expect(await migrate(db, 1, [one, two])).toEqual([2])
  })

  it('refuses a gap, a changed step and a newer database', async () => {
    expect(await codeOf([one, step(3, 'SELECT 1')])).toBe('gap')
    await migrate(db, 1, [one, two])
    expect(await codeOf([one, { ...two, hash: 'other' }])).toBe('changed')
    expect(await codeOf([one])).toBe('newer')
    await expect(pendingMigrations(db, [one])).rejects.toThrow(/newer than this program/)
    await db.write([raw('DELETE FROM migration WHERE n = 1')])
    expect(await codeOf([one, two])).toBe('gap')
  })
})

describe('the schema of the queries', () => {
  const tables = Object.values(schema).filter(
    (each) => typeof each === 'object' && !Array.isArray(each),
  ) as unknown as SQLiteTable[]
  const quoted = (name: string) => `"${name}"`

  it('is the schema of the database, column by column', async () => {
    const store = await makeFileStore()
    await migrate(store.db, 1, migrations)
    const [names = []] = await store.db.read([
      raw(`SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'`),
    ])
    const configs = tables.map(getTableConfig)
    expect(configs.map((table) => table.name).sort()).toEqual(names.map((row) => row.name).sort())
    for (const { name, columns, primaryKeys } of configs) {
      const [found = []] = await store.db.read([raw(`PRAGMA table_xinfo(${quoted(name)})`)])
      const keys = primaryKeys.flatMap((key) => key.columns.map((column) => column.name))
      const ours = columns.map((column) => ({
        name: column.name,
        type: column.getSQLType().toUpperCase(),
        notNull: column.notNull || column.primary,
        inKey: column.primary || keys.includes(column.name),
        hasDefault: column.default !== undefined,
        hidden: 0,
      }))
      const theirs = found.map((row) => ({
        name: row.name,
        type: row.type,
        notNull: row.notnull === 1,
        inKey: row.pk !== 0,
        hasDefault: row.dflt_value !== null,
        hidden: row.hidden,
      }))
      expect(ours, name).toEqual(theirs)
    }
    await store.dispose()
  })

  it('says of every column whether it may hold personal data', () => {
    for (const { name, columns } of tables.map(getTableConfig)) {
      const may = personalData.filter((e) => e.table === name).flatMap((e) => e.columns)
      const all = [...may, ...(nobodysData[name] ?? [])]
      expect(all.sort(), name).toEqual(columns.map((c) => c.name).sort())
    }
    const names = tables.map((t) => getTableConfig(t).name)
    const listed = [...personalData.map((e) => e.table), ...Object.keys(nobodysData)]
    expect([...new Set(listed)].sort()).toEqual(names.sort())
  })
})
