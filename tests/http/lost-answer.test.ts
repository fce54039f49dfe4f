import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { createApp } from '../../src/app'
import { parseConfig } from '../../src/config'
import type { Db } from '../../src/store/db'
import { DbError } from '../../src/store/db-error'
import { openFileDb } from '../../src/store/file'
import { keyTaken } from '../../src/store/idempotency'
import { lineSeqTaken } from '../../src/store/lines'
import { openPhotoFolder } from '../../src/store/photo-folder'
import { copyBase } from '../support/base-db'
import { grey } from '../support/picture'

let folder: string
let kept: Db
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'jambside-lost-'))
  await copyBase(join(folder, 'jambside.db'))
  kept = await openFileDb(join(folder, 'jambside.db'))
})
afterEach(async () => {
  await kept.close()
  rmSync(folder, { recursive: true, force: true })
})

/** The program over a database whose next write fails with `constraint`, having taken or not. */
const program = (photos: ReturnType<typeof openPhotoFolder>) => {
  let next: { readonly constraint: string; readonly took: boolean } | undefined
  let n = 0
  const app = createApp({
    config: parseConfig({}),
    openDb: () => ({
      read: kept.read,
      write: async (stmts, options) => {
        const fails = next
        next = undefined
        const rows = fails?.took === false ? [] : await kept.write(stmts, options)
        if (fails) throw new DbError('conflict', 'taken', { constraint: fails.constraint })
        return rows
      },
      close: async () => {},
    }),
    photos,
    now: () => Date.UTC(2026, 2, 2, 9),
    random: (bytes) => {
      n += 1
      return new Uint8Array(bytes).map((_, i) => (i * 31 + n * 7) % 251)
    },
    log: () => {},
    fault: () => {},
    manifest: {
      'docket.css': 'docket.css',
      'enhance.js': 'enhance.js',
      'bench.js': 'bench.js',
      'leave.js': 'leave.js',
      'bench-worker.js': 'bench-worker.js',
    },
  })
  return { app, fail: (constraint: string, took: boolean) => (next = { constraint, took }) }
}

it.each([
  ['whose first try took and whose answer was lost', keyTaken, true],
  ['that met another write and was decided again', lineSeqTaken, false],
])('a picture %s stands once, row and bytes', async (_, constraint, took) => {
  const photos = openPhotoFolder(join(folder, 'photos'))
  const { app, fail } = program(photos)
  const open = await app.request('/api/v1/enquiries', { method: 'POST' })
  const { id, key } = (await open.json()) as { id: string; key: string }
  const headers = { authorization: `Bearer ${key}`, 'idempotency-key': 'one' }
  const body = new FormData()
  body.set('file', new File([grey()], 'a.png'))
  body.set('subject', 'other')
  const path = `/api/v1/enquiries/${id}/photos`
  fail(constraint, took)
  const added = await app.request(path, { method: 'POST', headers, body })
  expect(added.status).toBe(201)
  const { photo } = (await added.json()) as { photo: string }
  expect((await app.request(`${path}/${photo}`, { headers })).status).toBe(200)
  expect(await photos.list()).toEqual([`${id}/${photo}.png`])
})

/** A form with a picture from the camera and one from the files. */
const two = (camera: string, file: string): FormData => {
  const body = new FormData()
  body.set('camera', new File([grey(4, camera)], 'camera.png'))
  body.set('file', new File([grey(5, file)], 'file.png'))
  body.set('subject', 'other')
  return body
}

it('both pictures of a form are taken, once each', async () => {
  const photos = openPhotoFolder(join(folder, 'photos'))
  const { app } = program(photos)
  const open = await app.request('/api/v1/enquiries', { method: 'POST' })
  const { id, key } = (await open.json()) as { id: string; key: string }
  const send = (once: string, body: FormData) =>
    app.request(`/api/v1/enquiries/${id}/photos`, {
      method: 'POST',
      headers: { authorization: `Bearer ${key}`, 'idempotency-key': once },
      body,
    })
  expect((await send('one', two('a', 'b'))).status).toBe(201)
  expect(await photos.list()).toHaveLength(2)
  expect((await send('one', two('a', 'b'))).status).toBe(201)
  expect(await photos.list()).toHaveLength(2)
  // Another picture from the camera is another request, whatever stands in the other input.
  expect((await send('one', two('c', 'b'))).status).toBe(422)
})

it('where one of two pictures cannot be put away, none is left behind', async () => {
  const photos = openPhotoFolder(join(folder, 'photos'))
  let put = 0
  const { app } = program({
    ...photos,
    put: (...given) => {
      put += 1
      return put === 2 ? Promise.reject(new Error('the disk is full')) : photos.put(...given)
    },
  })
  const open = await app.request('/api/v1/enquiries', { method: 'POST' })
  const { id, key } = (await open.json()) as { id: string; key: string }
  const headers = { authorization: `Bearer ${key}` }
  const path = `/api/v1/enquiries/${id}/photos`
  const added = await app.request(path, { method: 'POST', headers, body: two('a', 'b') })
  expect([added.status, put]).toEqual([500, 2])
  expect(await photos.list()).toEqual([])
})
