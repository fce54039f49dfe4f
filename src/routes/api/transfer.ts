import * as z from 'zod'
import { studioProfile } from '../../quote/studio-profile'
import {
  type ImportTable,
  insertRows,
  selectAllSettings,
  selectExport,
  selectKnownDockets,
} from '../../store/exporting'
import { profileFaults } from '../acts/profile-faults'
import { type Fault, invalid } from '../http/problem'
import { faultsOf } from '../http/read-input'
import { type Route, route } from '../route'
import { anyAnswer } from './shapes'

const maybe = z.exactOptional
const rows = z.array(z.record(z.string().max(64), z.json())).max(20_000)
const PAGE = 100
/** Parents before children: a line needs its head. */
const ORDER = [
  'heads',
  'lines',
  'people',
  'texts',
  'photos',
] as const satisfies readonly ImportTable[]

const docketOf = (row: Readonly<Record<string, unknown>>): string => String(row.docket ?? '')

/** Names of columns that cannot be in an export of ours would end as a fault of the database. */
const unknownDockets = (
  body: Readonly<Partial<Record<ImportTable, readonly Readonly<Record<string, unknown>>[]>>>,
): readonly Fault[] => {
  const heads = new Set((body.heads ?? []).map(docketOf))
  return ORDER.flatMap((table) =>
    (body[table] ?? []).flatMap((row, i) =>
      heads.has(docketOf(row)) ? [] : [{ pointer: `/${table}/${i}/docket`, code: 'ERR_VALUE' }],
    ),
  )
}

/** Settings are what every request is answered with: one that cannot be used closes the studio. */
const settingsFaults = (rows: readonly Readonly<Record<string, unknown>>[]): readonly Fault[] =>
  rows.flatMap((row, i) => {
    const parsed = studioProfile.safeParse(row.body, { reportInput: true })
    const faults = parsed.success ? profileFaults(parsed.data) : faultsOf(parsed.error)
    return faults.map((f) => ({ ...f, pointer: `/settings/${i}/body${f.pointer}` }))
  })

export const transferRoutes: readonly Route[] = [
  route({
    id: 'export',
    face: 'api',
    method: 'GET',
    path: '/api/v1/export',
    rights: 'owner',
    summary:
      'Everything as data, a page of dockets at a time; `after` is the `next` of the page before.',
    query: z.strictObject({ after: maybe(z.string().regex(/^[A-Za-z0-9_-]{0,64}$/)) }),
    answers: { 200: anyAnswer },
    load: ({ query }) => ({
      ...selectExport(query.after ?? '', PAGE),
      settings: selectAllSettings(),
    }),
    act: ({ loaded, query }) => {
      const { settings, ...dockets } = loaded
      const last = [...dockets.heads]
        .map((h) => h.docket)
        .sort()
        .at(-1)
      return {
        status: 200,
        json: {
          format: 'jambside-1',
          ...dockets,
          settings: query.after === undefined ? settings : [],
          next: dockets.heads.length === PAGE ? (last ?? null) : null,
        },
      }
    },
  }),
  route({
    id: 'import',
    face: 'api',
    method: 'POST',
    path: '/api/v1/import',
    rights: 'owner',
    summary: 'Put a page of an export back; a docket that is there already is left as it is.',
    body: z.strictObject({
      format: z.literal('jambside-1'),
      heads: rows,
      lines: rows,
      people: rows,
      texts: rows,
      photos: rows,
      estimates: rows,
      settings: maybe(rows),
      next: maybe(z.string().nullable()),
    }),
    mostBytes: 33_554_432,
    answers: { 200: anyAnswer },
    load: ({ body }) => ({ known: selectKnownDockets(body.heads.map(docketOf)) }),
    act: ({ loaded, body, studio }) => {
      const faults = [...unknownDockets(body), ...settingsFaults(body.settings ?? [])]
      if (faults.length > 0) throw invalid(faults.slice(0, 50))
      const known = new Set(loaded.known)
      const fresh = (table: ImportTable) => body[table].filter((row) => !known.has(docketOf(row)))
      const ahead = (body.settings ?? []).filter((row) => Number(row.rev) > studio.rev)
      return {
        status: 200,
        writes: [
          ...insertRows('settings', ahead),
          ...insertRows('estimates', body.estimates),
          ...ORDER.flatMap((table) => insertRows(table, fresh(table))),
        ],
        json: { imported: fresh('heads').map(docketOf), known: [...known] },
      }
    },
  }),
]
