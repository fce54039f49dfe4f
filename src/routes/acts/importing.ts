import { fold } from '../../docket/fold'
import { kinds, type LineKind } from '../../docket/kinds'
import type { Line } from '../../docket/line'
import { studioProfile } from '../../quote/studio-profile'
import {
  DOCKET_TABLES,
  type DocketTable,
  type ExportTable,
  insertRows,
  unfitColumns,
} from '../../store/exporting'
import type { Photo } from '../../store/photos'
import { isPhotoKey } from '../../store/photos-port'
import { type Fault, invalid, Problem } from '../http/problem'
import { faultsOf } from '../http/read-input'
import { cleanPicture } from './picture'
import { profileFaults } from './profile-faults'

type Row = Readonly<Record<string, unknown>>
/** A page of an export as it comes in; `accesses` and `settings` may be missing. */
export type Page = Readonly<Partial<Record<ExportTable, readonly Row[]>>>

const docketOf = (row: Row): string => String(row.docket ?? '')
const wrong = (table: string, i: number, field: string, code = 'ERR_VALUE'): Fault => ({
  pointer: `/${table}/${i}/${field}`,
  code,
})

const each = (
  page: Page,
  table: ExportTable,
  check: (row: Row, i: number) => readonly Fault[],
): readonly Fault[] => (page[table] ?? []).flatMap(check)

/** Columns that do not fit would end as a fault of the database. */
const columnFaults = (page: Page): readonly Fault[] =>
  ([...DOCKET_TABLES, 'estimates', 'settings'] as const).flatMap((table) =>
    each(page, table, (row, i) => unfitColumns(table, row).map((name) => wrong(table, i, name))),
  )

/** A row belongs to a docket of its own page. */
const strayFaults = (page: Page): readonly Fault[] => {
  const heads = new Set((page.heads ?? []).map(docketOf))
  return DOCKET_TABLES.flatMap((table) =>
    each(page, table, (row, i) => (heads.has(docketOf(row)) ? [] : [wrong(table, i, 'docket')])),
  )
}

const lineFaults = (page: Page): readonly Fault[] =>
  each(page, 'lines', (row, i) => {
    if (!Object.hasOwn(kinds, String(row.kind))) return [wrong('lines', i, 'kind')]
    const parsed = kinds[row.kind as LineKind].safeParse(row.body, { reportInput: true })
    return parsed.success
      ? []
      : faultsOf(parsed.error).map((f) => ({ ...f, pointer: `/lines/${i}/body${f.pointer}` }))
  })

/** The lines of each docket run from its opening on without a gap, and fold to what its head says. */
const docketFaults = (page: Page): readonly Fault[] =>
  each(page, 'heads', (head, i) => {
    const lines = (page.lines ?? [])
      .filter((l) => docketOf(l) === docketOf(head))
      .map(({ device, n, ...rest }) => ({
        ...rest,
        ...(device == null ? {} : { device }),
        ...(n == null ? {} : { n }),
      })) as unknown as Line[]
    lines.sort((a, b) => a.seq - b.seq)
    if (lines[0]?.kind !== 'opened' || lines.some((l, at) => l.seq !== at + 1))
      return [wrong('heads', i, 'docket', 'ERR_LINES_INCOMPLETE')]
    const { rev, state } = fold(lines)
    return [
      ...(rev === head.rev ? [] : [wrong('heads', i, 'rev')]),
      ...(state === head.state ? [] : [wrong('heads', i, 'state')]),
    ]
  })

/** Keys are made by us; one that says otherwise could reach a picture of somebody else. */
const photoFaults = (page: Page): readonly Fault[] =>
  each(page, 'photos', (row, i) => {
    const key = String(row.key)
    return isPhotoKey(key) && key.startsWith(`${docketOf(row)}/${String(row.id)}.`)
      ? []
      : [wrong('photos', i, 'key')]
  })

/** Nobody is let into the studio by an import. */
const accessFaults = (page: Page): readonly Fault[] =>
  each(page, 'accesses', (row, i) =>
    row.kind === 'customer' && /^[0-9a-f]{64}$/.test(String(row.hash))
      ? []
      : [wrong('accesses', i, 'kind')],
  )

/** Settings are what every request is answered with: one that cannot be used closes the studio. */
const settingsFaults = (page: Page): readonly Fault[] =>
  each(page, 'settings', (row, i) => {
    const parsed = studioProfile.safeParse(row.body, { reportInput: true })
    const faults = parsed.success ? profileFaults(parsed.data) : faultsOf(parsed.error)
    return faults.map((f) => ({ ...f, pointer: `/settings/${i}/body${f.pointer}` }))
  })

/** Throws 422 with what in a page cannot be taken; the first kind of fault hides those that follow from it. */
export const checkPage = (page: Page): void => {
  const shapes = [...columnFaults(page), ...strayFaults(page)]
  const bodies = shapes.length > 0 ? [] : [...lineFaults(page), ...photoFaults(page)]
  const keys = shapes.length > 0 ? [] : [...accessFaults(page), ...settingsFaults(page)]
  const folded = shapes.length + bodies.length > 0 ? [] : docketFaults(page)
  const faults = [...shapes, ...bodies, ...keys, ...folded]
  if (faults.length > 0) throw invalid(faults.slice(0, 50))
}

/** The statements that put a checked page in; a docket that is `known` is left as it is. */
export const importPage = (page: Page, known: readonly string[], settingsRev: number) => {
  const there = new Set(known)
  const fresh = (table: DocketTable) => (page[table] ?? []).filter((r) => !there.has(docketOf(r)))
  const ahead = (page.settings ?? []).filter((row) => Number(row.rev) > settingsRev)
  return {
    imported: fresh('heads').map(docketOf),
    writes: [
      ...insertRows('settings', ahead),
      ...insertRows('estimates', page.estimates ?? []),
      ...DOCKET_TABLES.flatMap((table) => insertRows(table, fresh(table))),
    ],
  }
}

/** The bytes of a picture whose row came with its page. Throws 404 or 422. */
export const importedPicture = (row: Photo | undefined, given: Uint8Array) => {
  if (!row) throw new Problem('unknown')
  const cleaned = cleanPicture(given)
  if (!cleaned.ok) throw invalid([{ pointer: '', code: cleaned.error }])
  const { bytes, mime } = cleaned.value
  if (mime !== row.mime || bytes.byteLength !== row.bytes)
    throw invalid([{ pointer: '', code: 'ERR_FILE_OTHER' }])
  return { key: row.key, bytes, mime }
}
