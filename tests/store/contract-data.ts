import { describe, expect, it } from 'vitest'
import { readAll, readOne } from '../../src/store/db'
import { eraseDocket, erasePersonalData } from '../../src/store/erasing'
import { insertEstimate, selectEstimate } from '../../src/store/estimates'
import {
  type Head,
  type ListOptions,
  listHeads,
  selectHead,
  selectHeadByReference,
  selectHeadsOfPerson,
  upsertHead,
} from '../../src/store/heads'
import { insertLines, selectLines } from '../../src/store/lines'
import { selectPeople, upsertPerson } from '../../src/store/people'
import { deletePhoto, insertPhoto, selectPhoto, selectPhotos } from '../../src/store/photos'
import { insertSettings, selectSettings, selectSettingsRevision } from '../../src/store/settings'
import { deleteText, insertText, selectTexts } from '../../src/store/texts'
import { dbErrorOf, raw } from './contract'
import { aHead, aLine, aPerson } from './rows'
import type { TestStore } from './stores'

const photo = {
  id: 'p1',
  docket: 'd1',
  subject: 'bonnet',
  mime: 'image/jpeg',
  bytes: 1234,
  width: 640,
  height: null,
  key: 'd1/p1.jpg',
  at: 5,
  by: 'customer',
}

/** The tables that make up a docket. */
export const dataContract = (store: () => TestStore): void => {
  describe('heads', () => {
    const pageOf = async (options: ListOptions) =>
      (await readAll(store().db, [listHeads(options)]))[0].map((row) => row.docket)

    it('come back as written and change by upsert, all but their creation', async () => {
      const first = aHead('d1', { reference: 'ABC-234', doubtful: true, priceLow: 12_345 })
      await store().db.write([upsertHead(first)])
      expect(await readOne(store().db, selectHead('d1'))).toEqual(first)
      const next: Head = { ...first, rev: 3, turn: 'ours', createdAt: 9, updatedAt: 9 }
      await store().db.write([upsertHead(next)])
      const found = await readOne(store().db, selectHeadByReference('ABC-234'))
      expect(found).toEqual({ ...next, createdAt: first.createdAt })
    })

    it('do not share a reference', async () => {
      const [a, b] = [aHead('d1', { reference: 'R' }), aHead('d2', { reference: 'R' })]
      const error = await dbErrorOf(store().db.write([upsertHead(a), upsertHead(b)]))
      expect(error).toMatchObject({ code: 'conflict', constraint: 'head.reference' })
    })

    it('are listed in pages, latest first, with no row twice or left out', async () => {
      const sortAts = [5, 7, 7, 7, 9, 1, 7]
      const rows = sortAts.map((sortAt, i) => aHead(`d${i}`, { sortAt, turn: 'ours' }))
      await store().db.write([...rows, aHead('x', { turn: 'closed' })].map(upsertHead))
      expect(await pageOf({ turn: 'ours', limit: 3 })).toEqual(['d4', 'd6', 'd3'])
      const after = { sortAt: 7, docket: 'd3' }
      expect(await pageOf({ turn: 'ours', limit: 3, after })).toEqual(['d2', 'd1', 'd0'])
      const last = { sortAt: 5, docket: 'd0' }
      expect(await pageOf({ turn: 'ours', limit: 3, after: last })).toEqual(['d5'])
      expect(await pageOf({ limit: 20 })).toHaveLength(8)
    })

    it('are found by reference, title, name and phone', async () => {
      const ada = { name: 'Zoë  Ångström', phone: '+44 (0)20 7946-0123', email: 'Zoe@example.org' }
      await store().db.write([
        upsertHead(aHead('d1', { person: 'p', reference: 'KLM-777', title: 'red 50% coupé' })),
        upsertHead(aHead('d2', { title: 'blue_van 2079' })),
        upsertPerson(aPerson('p', 'd1', ada)),
      ])
      const find = (q: string) => pageOf({ q, limit: 9 })
      for (const q of ['klm-7', 'RED', 'zoe angs', 'Ångström', '7946 0123', '50%']) {
        expect(await find(q), q).toEqual(['d1'])
      }
      expect(await find('e_v')).toEqual(['d2'])
      expect(await find('2079')).toEqual(['d2', 'd1'])
      for (const q of ['d_c', '0123x7', 'nobody', '%%']) expect(await find(q), q).toEqual([])
      const [listed] = (await readAll(store().db, [listHeads({ limit: 1, q: 'klm' })]))[0]
      expect(listed?.personName).toBe('Zoë  Ångström')
    })

    it('are found for a customer who comes back', async () => {
      const known = { phone: '0044 20 7946 0123', email: 'Zoe@example.org' }
      await store().db.write([
        upsertHead(aHead('d1', { person: 'p' })),
        upsertPerson(aPerson('p', 'd1', known)),
      ])
      const find = async (who: { phone?: string; email?: string }) =>
        (await readAll(store().db, [selectHeadsOfPerson(who)]))[0].length
      expect(await find({ phone: '00442079460123' })).toBe(1)
      expect(await find({ email: 'zoe@EXAMPLE.org' })).toBe(1)
      expect(await find({ phone: '1', email: 'other@example.org' })).toBe(0)
      expect(await find({})).toBe(0)
    })
  })

  describe('what stands beside the lines', () => {
    it('people, texts and photos come back as written', async () => {
      const zoe = aPerson('p', 'd1', { name: 'Zoë', vin: 'V' })
      const text = { id: 't1', docket: 'd1', field: 'note', text: "it's 'quoted'; --" }
      await store().db.write([
        upsertHead(aHead('d1')),
        upsertPerson(aPerson('p', 'd1', { name: 'Old' })),
        upsertPerson(zoe),
        insertText(text),
        insertText({ ...text, id: 't2' }),
        deleteText('d1', 't2'),
        deleteText('d2', 't1'),
        insertPhoto(photo),
      ])
      const found = await readAll(store().db, [
        selectPeople('d1'),
        selectTexts('d1'),
        selectPhotos('d1'),
        selectPhoto('d2', 'p1'),
      ])
      expect(found).toEqual([[zoe], [text], [photo], []])
      const { stmt, map } = deletePhoto('d1', 'p1')
      const [gone = []] = await store().db.write([stmt])
      expect(map(gone)).toEqual([photo])
      expect((await readAll(store().db, [selectPhotos('d1')]))[0]).toEqual([])
    })

    it('estimates are kept once and never change', async () => {
      const made = { digest: 'x', engine: '1', script: '1', settingsRev: 1, at: 1 }
      const first = { ...made, inputs: { a: [1] }, result: { low: 1 } }
      await store().db.write([insertEstimate(first)])
      await store().db.write([insertEstimate({ ...first, result: { low: 2 }, at: 2 })])
      expect(await readOne(store().db, selectEstimate('x'))).toEqual(first)
      await dbErrorOf(store().db.write([raw(`UPDATE estimate SET result = '{}'`)]))
      expect(await readOne(store().db, selectEstimate('y'))).toBeNull()
    })

    it('settings grow by revisions, and the second of two savers collides', async () => {
      const one = { rev: 1, body: { rate: 6000 }, by: 'owner', at: 1 }
      const two = { rev: 2, body: { rate: 6500 }, by: 'owner', at: 2 }
      await store().db.write([insertSettings(one), insertSettings(two)])
      const error = await dbErrorOf(store().db.write([insertSettings({ ...two, body: {} })]))
      expect(error).toMatchObject({ code: 'conflict', constraint: 'settings.rev' })
      const replace = `INSERT OR REPLACE INTO settings VALUES (1, '{}', 'x', 9)`
      await dbErrorOf(store().db.write([raw(replace)]))
      const found = await readAll(store().db, [selectSettings(), selectSettingsRevision(1)])
      expect(found).toEqual([[two], [one]])
    })
  })

  describe('erasing', () => {
    const all = 'SELECT count(*) AS n FROM'
    it('removes personal data, leaves the lines, and closes the lines again', async () => {
      const { db } = store()
      await db.write([
        ...[upsertHead(aHead('d1', { person: 'p' })), upsertHead(aHead('d2'))],
        insertLines('d1', 0, [aLine('a'), aLine('b', { body: { leaked: 'Zoë' } })]),
        insertLines('d2', 0, [aLine('c')]),
        upsertPerson(aPerson('p', 'd1', { name: 'Zoë' })),
        upsertPerson(aPerson('q', 'd2', { name: 'Other' })),
        insertText({ id: 't', docket: 'd1', field: 'note', text: 'Zoë' }),
        insertPhoto(photo),
      ])
      await db.write(
        erasePersonalData('d1', 5, { rewrites: [{ id: 'b', body: { erased: true } }] }),
      )
      const [lines, people, others, texts, photos] = await readAll(db, [
        selectLines('d1'),
        selectPeople('d1'),
        selectPeople('d2'),
        selectTexts('d1'),
        selectPhotos('d1'),
      ])
      expect(lines.map((each) => each.body)).toEqual([aLine('a').body, { erased: true }])
      expect([people, texts, photos]).toEqual([[], [], []])
      expect(others).toHaveLength(1)
      expect(await readOne(db, selectHead('d1'))).toMatchObject({ person: null, updatedAt: 5 })
      await dbErrorOf(db.write([raw(`DELETE FROM line WHERE docket = 'd1'`)]))
    })

    it('opens one docket only', async () => {
      const { db } = store()
      await db.write([
        ...[upsertHead(aHead('d1')), upsertHead(aHead('d2'))],
        ...[insertLines('d1', 0, [aLine('a')]), insertLines('d2', 0, [aLine('c')])],
      ])
      const open = raw(`INSERT INTO erasing VALUES ('d1')`)
      const attempts = [
        `DELETE FROM line WHERE docket = 'd2'`,
        `UPDATE line SET docket = 'd2', seq = 9 WHERE docket = 'd1'`,
        `UPDATE OR REPLACE line SET id = 'c' WHERE docket = 'd1'`,
        `INSERT OR REPLACE INTO line (docket, seq, id, v, kind, body, by, at)
         VALUES ('d1', 5, 'c', 1, 'k', '{}', 'x', 1)`,
      ]
      for (const sql of attempts) await dbErrorOf(db.write([open, raw(sql)]))
      expect(await db.read([raw(`${all} line`), raw(`${all} erasing`)])).toEqual([
        [{ n: 2 }],
        [{ n: 0 }],
      ])
    })

    it('removes a whole docket', async () => {
      const { db } = store()
      await db.write([
        upsertHead(aHead('d1', { person: 'p' })),
        insertLines('d1', 0, [aLine('a')]),
        upsertPerson(aPerson('p', 'd1')),
        insertPhoto(photo),
      ])
      await db.write(eraseDocket('d1'))
      const tables = ['head', 'line', 'person', 'photo', 'erasing']
      const counts = await db.read(tables.map((table) => raw(`${all} ${table}`)))
      expect(counts.flat()).toEqual(tables.map(() => ({ n: 0 })))
    })
  })
}
