import { existsSync, mkdirSync, rmSync, truncateSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { backup } from '../../scripts/backup'
import { restore } from '../../scripts/restore'
import { dataPaths } from '../../src/store/data-dir'
import { readAll } from '../../src/store/db'
import { openFileDb } from '../../src/store/file'
import { upsertHead } from '../../src/store/heads'
import { insertLines, selectLines } from '../../src/store/lines'
import { migrate } from '../../src/store/migrate'
import { openPhotoFolder } from '../../src/store/photo-folder'
import { insertPhoto } from '../../src/store/photos'
import { aHead, aLine } from './rows'
import { makeFolder } from './stores'

const photo = { id: 'p', docket: 'd1', subject: 'roof', mime: 'image/webp', bytes: 3, at: 1 }

const makeData = async (folder: string) => {
  const { database, photos } = dataPaths(folder)
  mkdirSync(folder)
  const db = await openFileDb(database)
  await migrate(db, 1)
  await openPhotoFolder(photos).put('d1/p.webp', new Uint8Array([1, 2, 3]), 'image/webp')
  await db.write([
    upsertHead(aHead('d1')),
    insertLines('d1', 0, [aLine('a'), aLine('b')]),
    insertPhoto({ ...photo, key: 'd1/p.webp', width: null, height: null, by: 'customer' }),
  ])
  return db
}

it('a backup of a running server restores to the same dockets and photos', async () => {
  const { folder, remove } = makeFolder()
  const at = (name: string) => join(folder, name)
  const db = await makeData(at('data'))
  const report = { dockets: 1, lines: 2, photos: 1, schema: 3 }
  expect(await backup(at('data'), at('copy'))).toEqual(report)
  await db.write([insertLines('d1', 2, [aLine('later')])])
  await db.close()

  expect(existsSync(dataPaths(at('copy')).lock)).toBe(false)
  expect(await restore(at('copy'), at('new'))).toEqual(report)
  const restored = await openFileDb(dataPaths(at('new')).database)
  const [lines] = await readAll(restored, [selectLines('d1')])
  expect(lines.map((line) => line.id)).toEqual(['a', 'b'])
  await restored.close()
  const bytes = await openPhotoFolder(dataPaths(at('new')).photos).get('d1/p.webp')
  expect(bytes).toEqual(new Uint8Array([1, 2, 3]))
  remove()
})

it('neither writes over anything, nor takes a damaged or incomplete copy', async () => {
  const { folder, remove } = makeFolder()
  const at = (name: string) => join(folder, name)
  await (await makeData(at('data'))).close()
  mkdirSync(at('full'))
  writeFileSync(join(at('full'), 'x'), '')
  await expect(backup(at('data'), at('full'))).rejects.toThrow(/not empty/)
  await expect(backup(at('none'), at('other'))).rejects.toThrow(/is not there/)
  await backup(at('data'), at('copy'))
  await expect(restore(at('copy'), at('full'))).rejects.toThrow(/not empty/)
  await expect(restore(at('copy'), at('data'))).rejects.toThrow(/not empty/)

  rmSync(join(dataPaths(at('copy')).photos, 'd1', 'p.webp'))
  await expect(restore(at('copy'), at('new'))).rejects.toThrow(/photos are missing/)
  truncateSync(dataPaths(at('copy')).database, 40_000)
  await expect(restore(at('copy'), at('new'))).rejects.toThrow()
  expect(existsSync(at('new'))).toBe(false)
  remove()
})
