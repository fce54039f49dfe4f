import { mkdir, open, readdir, readFile, rename, rm } from 'node:fs/promises'
import { dirname, join, relative, sep } from 'node:path'
import { checkPhotoKey, isPhotoKey, type PhotoStore } from './photos-port'

/** Photos as files under a folder of this machine, which is made when needed. Node only. */
export const openPhotoFolder = (folder: string): PhotoStore => {
  const pathOf = (key: string) => join(folder, ...checkPhotoKey(key).split('/'))
  return {
    put: async (key, bytes) => {
      const path = pathOf(key)
      await mkdir(dirname(path), { recursive: true })
      await writeWhole(path, bytes)
    },
    get: async (key) => {
      try {
        return new Uint8Array(await readFile(pathOf(key)))
      } catch (error) {
        if (isMissing(error)) return null
        throw error
      }
    },
    delete: async (key) => rm(pathOf(key), { force: true }),
    list: async (prefix = '') => {
      const keys = (await filesUnder(folder)).map((path) =>
        relative(folder, path).split(sep).join('/'),
      )
      return keys.filter((key) => isPhotoKey(key) && key.startsWith(prefix)).sort()
    },
  }
}

// Written beside and renamed, so that a photo is there whole or not at all, also after a crash.
const writeWhole = async (path: string, bytes: Uint8Array) => {
  const beside = `${path}~`
  const file = await open(beside, 'w')
  try {
    await file.writeFile(bytes)
    await file.sync()
  } finally {
    await file.close()
  }
  await rename(beside, path)
}

const filesUnder = async (folder: string): Promise<readonly string[]> => {
  try {
    const entries = await readdir(folder, { withFileTypes: true })
    const found = entries.map((entry) => {
      const path = join(folder, entry.name)
      return entry.isDirectory() ? filesUnder(path) : entry.isFile() ? [path] : []
    })
    return (await Promise.all(found)).flat()
  } catch (error) {
    if (isMissing(error)) return []
    throw error
  }
}

const isMissing = (error: unknown) => (error as { code?: unknown }).code === 'ENOENT'
