import type { Db } from '../../store/db'
import { readAll } from '../../store/db'
import { selectAllSettings, selectExport } from '../../store/exporting'

/** Dockets of one page: so few that no answer of a database comes near its limit (10 MB). */
export const PAGE_DOCKETS = 25

/** Dockets of one part, which is one file. */
export const PART_DOCKETS = 250

export const EXPORT_FORMAT = 'jambside-1'

type Loads = ReturnType<typeof selectExport> & {
  readonly settings: ReturnType<typeof selectAllSettings>
}
export type PageRows = { readonly [K in keyof Loads]: ReturnType<Loads[K]['map']> }

/** What a page of an export asks the database for, dockets behind `after`. */
export const pageLoad = (after: string): Loads => ({
  ...selectExport(after, PAGE_DOCKETS),
  settings: selectAllSettings(),
})

/** A page as data; the settings stand in the first one. `next` is the `after` of the one behind it. */
export const pageOf = (rows: PageRows, after: string) => {
  const last = rows.heads.map((h) => h.docket).reduce((most, d) => (d > most ? d : most), '')
  return {
    format: EXPORT_FORMAT,
    ...rows,
    settings: after === '' ? rows.settings : [],
    next: rows.heads.length === PAGE_DOCKETS ? last : null,
  }
}
export type ExportPage = ReturnType<typeof pageOf>

/** The pages behind `after`, up to and with the one that reaches `most` dockets; each is one read. */
export async function* exportPages(
  db: Db,
  after: string,
  most: number,
): AsyncGenerator<ExportPage> {
  let from: string | null = after
  let had = 0
  while (from !== null && had < most) {
    const load = pageLoad(from)
    const names = Object.keys(load) as (keyof Loads)[]
    const all = await readAll(
      db,
      names.map((name) => load[name]),
    )
    const rows = Object.fromEntries(names.map((name, i) => [name, all[i]])) as unknown as PageRows
    const page = pageOf(rows, from)
    had += page.heads.length
    yield page
    from = page.next
  }
}
