import { join } from 'node:path'

/** The files of one machine's data folder. */
export const dataPaths = (folder: string) => ({
  database: join(folder, 'jambside.db'),
  photos: join(folder, 'photos'),
  lock: join(folder, 'lock.db'),
})
