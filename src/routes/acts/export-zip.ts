import { makeZip } from 'client-zip'
import type { Deps } from '../deps'
import { VIEWS, type View, viewHead, viewRows } from './csv-views'
import { exportPages, PART_DOCKETS } from './export-pages'

type Entry = { readonly name: string; readonly lastModified: Date; readonly input: string | Blob }

const README = `One part of everything this studio keeps.

pages/   the records as JSON, a page of dockets to a file, as GET /api/v1/export gives them
photos/  every picture, by docket
views/   tables for a spreadsheet: dockets, offers, work. They are for reading; import takes the pages.

To put it into an empty studio: npm run import -- <folder or file>
`

/**
 * The files of one part: the dockets behind `after`, their pictures as they are kept, and tables. A
 * picture whose bytes are gone is left out and named in \`missing.txt\`.
 */
async function* entries(deps: Deps, after: string): AsyncGenerator<Entry> {
  const db = deps.openDb()
  const lastModified = new Date(deps.now())
  const views = Object.fromEntries(VIEWS.map((v) => [v, [viewHead(v)]])) as Record<View, string[]>
  const missing: string[] = []
  let n = 0
  try {
    yield { name: 'README.txt', lastModified, input: README }
    for await (const page of exportPages(db, after, PART_DOCKETS)) {
      n += 1
      const name = `pages/${String(n).padStart(4, '0')}.json`
      yield { name, lastModified, input: JSON.stringify(page) }
      for (const view of VIEWS) views[view].push(viewRows(view, page))
      for (const { key, at } of page.photos) {
        const bytes = await deps.photos.get(key)
        if (bytes === null) missing.push(key)
        else
          yield {
            name: `photos/${key}`,
            lastModified: new Date(at),
            input: new Blob([bytes as BlobPart]),
          }
      }
    }
    for (const view of VIEWS)
      yield { name: `views/${view}.csv`, lastModified, input: `\ufeff${views[view].join('')}` }
    if (missing.length > 0)
      yield { name: 'missing.txt', lastModified, input: `${missing.join('\n')}\n` }
  } finally {
    await db.close()
  }
}

/** One part of an export as a ZIP file that is made while it is sent: a page and a picture at a time. */
export const exportZip = (deps: Deps, after: string): ReadableStream<Uint8Array> =>
  makeZip(entries(deps, after))

/** One view over all dockets, made while it is sent. */
export const exportCsv = (deps: Deps, view: View): ReadableStream<Uint8Array> => {
  const utf8 = new TextEncoder()
  const db = deps.openDb()
  const pages = exportPages(db, '', Number.POSITIVE_INFINITY)
  let begun = false
  return new ReadableStream<Uint8Array>({
    pull: async (to) => {
      if (!begun) {
        begun = true
        return to.enqueue(utf8.encode(`\ufeff${viewHead(view)}`))
      }
      const { done, value } = await pages.next()
      if (!done) return to.enqueue(utf8.encode(viewRows(view, value)))
      await db.close()
      to.close()
    },
    cancel: async () => {
      await pages.return(undefined)
      await db.close()
    },
  })
}
