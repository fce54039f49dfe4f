import { readdir, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { runScript } from './run-script'
import { type Studio, toldStudio } from './transfer/api'
import { unzipFile } from './transfer/unzip'

/** What an import came to. */
export type Imported = {
  readonly dockets: number
  /** Dockets that were there already and were left as they are. */
  readonly known: number
  readonly pictures: number
}

type Answer = { readonly imported: readonly string[]; readonly known: readonly string[] }

const MIMES: Readonly<Record<string, string>> = {
  jpg: 'image/jpeg',
  png: 'image/png',
  webp: 'image/webp',
}

const sendPicture = async (studio: Studio, name: string, bytes: Uint8Array<ArrayBuffer>) => {
  const [, docket = '', photo = '', ending = ''] = /^photos\/(.+)\/(.+)\.(\w+)$/.exec(name) ?? []
  const path = `/api/v1/import/${encodeURIComponent(docket)}/photos/${encodeURIComponent(photo)}`
  await studio.send('PUT', path, bytes, MIMES[ending] ?? 'image/jpeg')
}

/** Puts the files of an export into a studio, in their order; what is there already stays. */
export const importFrom = async (studio: Studio, files: readonly string[]): Promise<Imported> => {
  let dockets = 0
  let known = 0
  let pictures = 0
  let fresh: ReadonlySet<string> = new Set()
  for (const file of files)
    for await (const { name, bytes } of unzipFile(file)) {
      if (name.startsWith('pages/')) {
        const text = new TextDecoder().decode(bytes)
        const sent = await studio.send('POST', '/api/v1/import', text, 'application/json')
        const answer = (await sent.json()) as Answer
        dockets += answer.imported.length
        known += answer.known.length
        fresh = new Set([...answer.imported, ...answer.known])
      } else if (name.startsWith('photos/') && fresh.has(name.split('/')[1] ?? '')) {
        await sendPicture(studio, name, bytes)
        pictures += 1
      }
    }
  return { dockets, known, pictures }
}

/** The files of a folder, or the one file. */
const filesAt = async (path: string): Promise<readonly string[]> => {
  if (!(await stat(path)).isDirectory()) return [path]
  const names = (await readdir(path)).filter((name) => name.endsWith('.zip')).sort()
  if (names.length === 0) throw new Error(`there is no .zip file in ${path}`)
  return names.map((name) => join(path, name))
}

runScript(import.meta.url, async () => {
  const args = process.argv.slice(2)
  const path = args.find((a) => !a.startsWith('--'))
  if (path === undefined) throw new Error('usage: import <folder or file> [--at=address]')
  console.log(await importFrom(toldStudio(args), await filesAt(path)))
})
