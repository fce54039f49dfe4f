import * as z from 'zod'
import { selectKnownDockets, selectPartEnds } from '../../store/exporting'
import { selectPhoto } from '../../store/photos'
import { VIEWS, type View } from '../acts/csv-views'
import { EXPORT_FORMAT, PART_DOCKETS, pageLoad, pageOf } from '../acts/export-pages'
import { exportCsv, exportZip } from '../acts/export-zip'
import { checkPage, importedPicture, importPage, type Page } from '../acts/importing'
import { Problem } from '../http/problem'
import { type Route, route } from '../route'
import { anyAnswer } from './shapes'

const maybe = z.exactOptional
const rows = z.array(z.record(z.string().max(64), z.json())).max(20_000)
const behind = z.strictObject({ after: maybe(z.string().regex(/^[A-Za-z0-9_-]{0,64}$/)) })

export const transferRoutes: readonly Route[] = [
  route({
    id: 'export',
    face: 'api',
    method: 'GET',
    path: '/api/v1/export',
    rights: 'owner',
    summary:
      'Everything as data, a page of dockets at a time; `after` is the `next` of the page before.',
    query: behind,
    answers: { 200: anyAnswer },
    load: ({ query }) => pageLoad(query.after ?? ''),
    act: ({ loaded, query }) => ({ status: 200, json: pageOf(loaded, query.after ?? '') }),
  }),
  route({
    id: 'export.parts',
    face: 'api',
    method: 'GET',
    path: '/api/v1/export/parts',
    rights: 'owner',
    summary: 'The files an export comes in: the `after` of each, the first one empty.',
    answers: { 200: anyAnswer },
    load: () => ({ ends: selectPartEnds(PART_DOCKETS) }),
    act: ({ loaded }) => ({
      status: 200,
      json: { dockets: PART_DOCKETS, parts: ['', ...loaded.ends] },
    }),
  }),
  route({
    id: 'export.zip',
    face: 'api',
    method: 'GET',
    path: '/api/v1/export/zip',
    rights: 'owner',
    summary: 'One part of everything as a ZIP file: pages of records, pictures, and tables.',
    query: behind,
    answers: { 200: 'other' },
    act: ({ deps, query }) => ({
      status: 200,
      stream: {
        body: exportZip(deps, query.after ?? ''),
        mime: 'application/zip',
        name: `jambside${query.after ? `-${query.after}` : ''}.zip`,
      },
    }),
  }),
  route({
    id: 'export.view',
    face: 'api',
    method: 'GET',
    path: '/api/v1/export/views/:view',
    rights: 'owner',
    summary: 'A table for a spreadsheet over all dockets (CSV): dockets, offers or work.',
    answers: { 200: 'other' },
    act: ({ deps, params }) => {
      const view = VIEWS.find((v) => v === params.view) as View | undefined
      if (!view) throw new Problem('unknown')
      const mime = 'text/csv; charset=utf-8; header=present'
      return { status: 200, stream: { body: exportCsv(deps, view), mime, name: `${view}.csv` } }
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
      format: z.literal(EXPORT_FORMAT),
      heads: rows,
      lines: rows,
      people: rows,
      texts: rows,
      photos: rows,
      estimates: rows,
      accesses: maybe(rows),
      settings: maybe(rows),
      next: maybe(z.string().nullable()),
    }),
    mostBytes: 33_554_432,
    answers: { 200: anyAnswer },
    load: ({ body }) => ({ known: selectKnownDockets(body.heads.map((h) => String(h.docket))) }),
    act: ({ loaded, body, studio }) => {
      const page = body as Page
      checkPage(page)
      const { imported, writes } = importPage(page, loaded.known, studio.rev)
      return { status: 200, writes, json: { imported, known: loaded.known } }
    },
  }),
  route<Uint8Array, undefined, { photos: ReturnType<typeof selectPhoto> }>({
    id: 'import.picture',
    face: 'api',
    method: 'PUT',
    path: '/api/v1/import/:id/photos/:photo',
    rights: 'owner',
    summary: 'The bytes of a picture whose record was imported before.',
    body: 'picture',
    answers: { 204: null },
    load: ({ params }) => ({ photos: selectPhoto(params.id ?? '', params.photo ?? '') }),
    act: ({ loaded, body, deps }) => {
      const { key, bytes, mime } = importedPicture(loaded.photos[0], body)
      return { status: 204, before: () => deps.photos.put(key, bytes, mime) }
    },
  }),
]
