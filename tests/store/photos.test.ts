import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { Miniflare } from 'miniflare'
import { describe, expect, it } from 'vitest'
import { openPhotoFolder } from '../../src/store/photo-folder'
import { openPhotoBucket, type PhotoBucket } from '../../src/store/photo-r2'
import { isPhotoKey, type PhotoStore } from '../../src/store/photos-port'
import { makeFolder } from './stores'

type Made = { readonly photos: PhotoStore; readonly dispose: () => Promise<void> }

const makePhotoFolder = async (): Promise<Made> => {
  const { folder, remove } = makeFolder()
  return { photos: openPhotoFolder(join(folder, 'photos')), dispose: async () => remove() }
}

const makeBucket = async (): Promise<Made> => {
  const script = 'export default { fetch: () => new Response() }'
  const miniflare = new Miniflare({ modules: true, script, r2Buckets: ['PHOTOS'] })
  const bucket = (await miniflare.getR2Bucket('PHOTOS')) as unknown as PhotoBucket
  return { photos: openPhotoBucket(bucket), dispose: () => miniflare.dispose() }
}

describe.each([
  ['a folder', makePhotoFolder],
  ['a bucket', makeBucket],
] as const)('photos in %s', (_, make) => {
  it('are put, replaced, given, listed and deleted by key', async () => {
    const { photos, dispose } = await make()
    expect(await photos.list()).toEqual([])
    expect(await photos.get('d1/a.jpg')).toBeNull()
    const bytes = new Uint8Array([0, 255, 1])
    await photos.put('d1/a.jpg', new Uint8Array([9]), 'image/jpeg')
    await photos.put('d1/a.jpg', bytes, 'image/jpeg')
    await photos.put('d1/b.jpg', bytes, 'image/jpeg')
    await photos.put('d2/c.webp', bytes, 'image/webp')
    expect(await photos.get('d1/a.jpg')).toEqual(bytes)
    expect(await photos.list()).toEqual(['d1/a.jpg', 'd1/b.jpg', 'd2/c.webp'])
    expect(await photos.list('d1/')).toEqual(['d1/a.jpg', 'd1/b.jpg'])
    await photos.delete('d1/a.jpg')
    await photos.delete('d1/a.jpg')
    expect(await photos.list('d1/')).toEqual(['d1/b.jpg'])
    await dispose()
  })

  it('refuse a key that leads elsewhere', async () => {
    const { photos, dispose } = await make()
    for (const key of ['../a', '/a', 'a/../b', 'a//b', '.a', 'a\\b', 'a\0b', '', 'a/']) {
      expect(isPhotoKey(key), key).toBe(false)
      await expect(photos.put(key, new Uint8Array(1), 'x')).rejects.toThrow(/photo key/)
      await expect(photos.get(key)).rejects.toThrow(/photo key/)
    }
    await dispose()
  })
})

it('a photo that was half written when the power went is not listed', async () => {
  const { folder, remove } = makeFolder()
  mkdirSync(join(folder, 'd1'))
  writeFileSync(join(folder, 'd1', 'a.jpg~'), 'half')
  expect(await openPhotoFolder(folder).list()).toEqual([])
  remove()
})
