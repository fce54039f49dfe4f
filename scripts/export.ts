import { createWriteStream } from 'node:fs'
import { mkdir, rename } from 'node:fs/promises'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { requireEmpty } from './empty-folder'
import { runScript } from './run-script'
import { type Studio, toldStudio } from './transfer/api'

/** Takes everything out of a studio, wherever it runs, into files of an empty folder. Gives their names. */
export const exportTo = async (studio: Studio, folder: string): Promise<readonly string[]> => {
  await mkdir(folder, { recursive: true })
  await requireEmpty(folder)
  const { parts } = (await (await studio.get('/api/v1/export/parts')).json()) as {
    readonly parts: readonly string[]
  }
  const names: string[] = []
  for (const [i, after] of parts.entries()) {
    const name = `part-${String(i + 1).padStart(4, '0')}.zip`
    const query = after === '' ? '' : `?after=${encodeURIComponent(after)}`
    const { body } = await studio.get(`/api/v1/export/zip${query}`)
    if (body === null) throw new Error(`${name} came without a body`)
    // Under its own name only once it is whole.
    const beside = join(folder, `${name}~`)
    await pipeline(Readable.fromWeb(body as never), createWriteStream(beside))
    await rename(beside, join(folder, name))
    names.push(name)
  }
  return names
}

runScript(import.meta.url, async () => {
  const args = process.argv.slice(2)
  const folder = args.find((a) => !a.startsWith('--'))
  if (folder === undefined) throw new Error('usage: export <empty folder> [--at=address]')
  console.log(await exportTo(toldStudio(args), folder))
})
