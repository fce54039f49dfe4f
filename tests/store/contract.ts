import Database from 'libsql'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Db, Stmt } from '../../src/store/db'
import { readAll, readOne } from '../../src/store/db'
import { DbError } from '../../src/store/db-error'
import { upsertHead } from '../../src/store/heads'
import { insertLines, selectLines, selectLinesById, selectMaxSeq } from '../../src/store/lines'
import { migrate } from '../../src/store/migrate'
import { dataContract } from './contract-data'
import { serviceContract } from './contract-services'
import { aHead, aLine } from './rows'
import type { TestStore } from './stores'

/** Fails unless the work rejects with a DbError, which it gives back. */
export const dbErrorOf = async (work: Promise<unknown>): Promise<DbError> => {
  const outcome = await work.then(
    () => 'nothing was refused',
    (error: unknown) => error,
  )
  expect(outcome).toBeInstanceOf(DbError)
  return outcome as DbError
}

export const raw = (sql: string, ...args: Stmt['args']): Stmt => ({ sql, args })

/** What every adapter of the Db port must do, on a fresh database per test. */
export const storeContract = (name: string, makeStore: () => Promise<TestStore>): void => {
  describe(`store over ${name}`, () => {
    let store: TestStore
    let db: Db
    beforeEach(async () => {
      store = await makeStore()
      db = store.db
      await migrate(db, 1)
    })
    afterEach(() => store.dispose())

    describe('batches', () => {
      it('gives the rows of each statement, in order', async () => {
        const rows = await db.read([raw('SELECT 1 AS a UNION SELECT 2'), raw('SELECT ? AS b', 'x')])
        expect(rows).toEqual([[{ a: 1 }, { a: 2 }], [{ b: 'x' }]])
      })

      it('takes no effect at all when one statement fails, and names it', async () => {
        const error = await dbErrorOf(
          db.write([
            upsertHead(aHead('d1')),
            insertLines('d1', 0, [aLine('a')]),
            insertLines('d1', 0, [aLine('b')]),
          ]),
        )
        expect(error).toMatchObject({
          code: 'conflict',
          statementIndex: 2,
          constraint: 'line.docket, line.seq',
        })
        expect(await db.read([raw('SELECT * FROM head'), raw('SELECT * FROM line')])).toEqual([
          [],
          [],
        ])
      })

      it('calls a broken statement a bug', async () => {
        const error = await dbErrorOf(db.write([raw('SELECT 1'), raw('SELEC 2')]))
        expect(error).toMatchObject({ code: 'bug', statementIndex: 1 })
      })

      it('refuses a value it cannot bind exactly', async () => {
        for (const value of [2 ** 53, Number.NaN, Number.POSITIVE_INFINITY, undefined as never]) {
          expect((await dbErrorOf(db.read([raw('SELECT ?', value)]))).code).toBe('bug')
        }
      })

      it('binds integers as integers, fractions as reals, and gives blobs back', async () => {
        const types = 'SELECT typeof(?1) AS i, typeof(?2) AS r, typeof(?3) AS n, ?4 AS big, ?5 AS b'
        const values = [3, 0.5, null, Number.MAX_SAFE_INTEGER, new Uint8Array([0, 255, 7])] as const
        const [rows] = await db.read([raw(types, ...values)])
        expect(rows?.[0]).toMatchObject({ i: 'integer', r: 'real', n: 'null', big: 2 ** 53 - 1 })
        expect([...new Uint8Array(rows?.[0]?.b as ArrayBuffer)]).toEqual([0, 255, 7])
      })

      it('refuses a reference to a row that is not there', async () => {
        const error = await dbErrorOf(db.write([insertLines('nowhere', 0, [aLine('a')])]))
        expect(error.code).toBe('bug')
        expect(error.message).toMatch(/FOREIGN KEY/)
      })

      it('is busy for writers, not for readers, while another process writes', async () => {
        const other = new Database(store.file)
        other.exec('BEGIN IMMEDIATE')
        expect((await dbErrorOf(db.write([upsertHead(aHead('d1'))]))).code).toBe('busy')
        expect(await db.read([raw('SELECT count(*) AS n FROM head')])).toEqual([[{ n: 0 }]])
        other.close()
        await db.write([upsertHead(aHead('d1'))])
        expect(await db.read([raw('SELECT count(*) AS n FROM head')])).toEqual([[{ n: 1 }]])
      })

      it('calls it a bug to use a database that was closed', async () => {
        await db.close()
        expect((await dbErrorOf(db.read([raw('SELECT 1')]))).code).toBe('bug')
      })

      it('refuses to change anything in a read', async () => {
        const sneaky = raw(`WITH a AS (SELECT 1) INSERT INTO erasing SELECT 'x' FROM a`)
        for (const stmt of [upsertHead(aHead('d1')), sneaky]) {
          expect((await dbErrorOf(db.read([raw('SELECT 1'), stmt]))).code).toBe('bug')
        }
        expect(await db.read([raw('SELECT * FROM head')])).toEqual([[]])
      })

      it('lets many writers pass one after the other', async () => {
        await db.write([upsertHead(aHead('d1'))])
        const ids = Array.from({ length: 20 }, (_, i) => `text-${i}`)
        await Promise.all(
          ids.map((id) =>
            db.write([raw('INSERT INTO free_text VALUES (?, ?, ?, ?)', id, 'd1', 'note', 'x')]),
          ),
        )
        expect(await db.read([raw('SELECT count(*) AS n FROM free_text')])).toEqual([[{ n: 20 }]])
      })
    })

    describe('lines', () => {
      beforeEach(async () => {
        const bench = aLine('b', { kind: 'read', body: [12.5, 'µm', null], device: 'dev', n: 7 })
        await db.write([upsertHead(aHead('d1')), insertLines('d1', 0, [aLine('a'), bench])])
      })

      it('come back as they were written, after a seq when asked', async () => {
        const [all, later, byId, highest, none] = await readAll(db, [
          selectLines('d1'),
          selectLines('d1', 1),
          selectLinesById(['b', 'unknown']),
          selectMaxSeq('d1'),
          selectMaxSeq('d2'),
        ])
        const bench = { docket: 'd1', seq: 2, id: 'b', device: 'dev', n: 7, v: 1 }
        const second = {
          ...bench,
          kind: 'read',
          body: [12.5, 'µm', null],
          by: 'customer',
          at: 1_000,
        }
        expect(all).toEqual([{ ...aLine('a'), docket: 'd1', seq: 1 }, second])
        expect(later).toEqual([second])
        expect(byId).toEqual([second])
        expect([highest, none]).toEqual([[2], [0]])
      })

      it('of a stale writer collide and leave no trace', async () => {
        const error = await dbErrorOf(
          db.write([upsertHead(aHead('d1', { rev: 2 })), insertLines('d1', 1, [aLine('c')])]),
        )
        expect(error).toMatchObject({ code: 'conflict', constraint: 'line.docket, line.seq' })
        expect(await db.read([raw('SELECT rev FROM head')])).toEqual([[{ rev: 0 }]])
      })

      it('with an id that is known collide, in whatever docket', async () => {
        await db.write([upsertHead(aHead('d2'))])
        const error = await dbErrorOf(db.write([insertLines('d2', 0, [aLine('a')])]))
        expect(error).toMatchObject({ code: 'conflict', constraint: 'line.id' })
        const sentTwice = await dbErrorOf(db.write([insertLines('d1', 0, [aLine('a')])]))
        expect(sentTwice).toMatchObject({ code: 'conflict', constraint: 'line.id' })
      })

      const columns = '(docket, seq, id, v, kind, body, by, at)'
      it.each([
        ['UPDATE', `UPDATE line SET body = '{}' WHERE id = 'a'`],
        ['DELETE', `DELETE FROM line WHERE id = 'a'`],
        [
          'INSERT OR REPLACE of a seq',
          `INSERT OR REPLACE INTO line ${columns} VALUES ('d1', 1, 'z', 1, 'k', '{}', 'x', 1)`,
        ],
        [
          'INSERT OR REPLACE of an id',
          `INSERT OR REPLACE INTO line ${columns} VALUES ('d1', 3, 'a', 1, 'k', '{}', 'x', 1)`,
        ],
        [
          'an upsert',
          `INSERT INTO line ${columns} VALUES ('d1', 1, 'a', 1, 'k', '{}', 'x', 1)
           ON CONFLICT (docket, seq) DO UPDATE SET body = excluded.body`,
        ],
        ['UPDATE OR REPLACE', `UPDATE OR REPLACE line SET id = 'b' WHERE id = 'a'`],
      ])('are never changed by %s', async (_, sql) => {
        const before = await db.read([raw('SELECT * FROM line ORDER BY seq')])
        await dbErrorOf(db.write([raw(sql)]))
        expect(await db.read([raw('SELECT * FROM line ORDER BY seq')])).toEqual(before)
      })

      it('hold nothing but JSON', async () => {
        const bad = raw(`INSERT INTO line ${columns} VALUES ('d1', 3, 'c', 1, 'k', '{', 'x', 1)`)
        expect((await dbErrorOf(db.write([bad]))).message).toMatch(/CHECK/)
      })

      it('of many at once keep their order', async () => {
        const many = Array.from({ length: 300 }, (_, i) => aLine(`m${i}`))
        await db.write([insertLines('d1', 2, many)])
        expect(await readOne(db, selectMaxSeq('d1'))).toBe(302)
        const [last] = (await readAll(db, [selectLines('d1', 301)]))[0]
        expect(last?.id).toBe('m299')
      })
    })

    dataContract(() => store)
    serviceContract(() => store)
  })
}
