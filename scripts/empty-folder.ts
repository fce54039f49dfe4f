import { mkdir, readdir } from 'node:fs/promises'

/** Makes the folder when needed; throws when there is anything in it. */
export const requireEmpty = async (folder: string): Promise<void> => {
  await mkdir(folder, { recursive: true })
  if ((await readdir(folder)).length > 0) throw new Error(`${folder} is not empty`)
}
