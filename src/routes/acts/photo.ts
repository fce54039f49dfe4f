import { isOpenToAnswers } from '../../docket/states'
import { deletePhoto, insertPhoto, type Photo } from '../../store/photos'
import { invalid, Problem } from '../http/problem'
import type { Call, Form, Load } from '../route'
import { appendLines, byOf, type Desk, stamp, write } from './desk'
import { cleanPicture } from './picture'

/** As many pictures the customer may add, and as many again the studio. */
export const MOST_PHOTOS = 40

const SUBJECT = /^[a-z0-9-]{1,40}$/

type Any = Call<unknown, unknown, Load>
const INPUTS = ['camera', 'file'] as const

/** One given file, checked by its signature and stripped of what it tells besides the picture. */
const pictureOf = async (call: Any, desk: Desk, subject: string, pointer: string, file: File) => {
  const cleaned = cleanPicture(new Uint8Array(await file.arrayBuffer()))
  if (!cleaned.ok) throw invalid([{ pointer, code: cleaned.error }])
  const { bytes, mime, width, height, ending } = cleaned.value
  const id = call.newId()
  const key = `${desk.id}/${id}.${ending}`
  const at = { at: call.now, by: byOf(call.who) }
  const size = { mime, bytes: bytes.byteLength, width, height }
  const row: Photo = { id, docket: desk.id, subject, ...size, key, ...at }
  return { row, bytes }
}

/**
 * Takes the pictures of a form, from the camera and from the files, all or none: where one is not
 * to be read, its own input says so. Throws 422. `id` is the first one's.
 */
export const addPhoto = async (call: Any, desk: Desk, form: Form) => {
  const given = INPUTS.flatMap((name) => {
    const file = form.file(name)
    return file ? [{ pointer: `/${name}`, file }] : []
  })
  if (given.length === 0) throw invalid([{ pointer: '/file', code: 'ERR_FILE_MISSING' }])
  const subject = form.get('subject') ?? 'other'
  if (!SUBJECT.test(subject)) throw invalid([{ pointer: '/subject', code: 'ERR_VALUE' }])
  const own = desk.photos.filter((p) => (p.by === 'customer') === (byOf(call.who) === 'customer'))
  if (own.length + given.length > MOST_PHOTOS)
    throw invalid([{ pointer: '/file', code: 'ERR_FILE_COUNT' }])
  const taken: Awaited<ReturnType<typeof pictureOf>>[] = []
  for (const { pointer, file } of given)
    taken.push(await pictureOf(call, desk, subject, pointer, file))
  const rows = taken.map(({ row }) => row)
  const bodies = rows.map(
    ({ id }) => ({ kind: 'photo-added', body: { photo: id, subject } }) as const,
  )
  const { writes, docket, placed } = appendLines(
    desk.id,
    desk.lines,
    desk.head,
    stamp(call, bodies),
  )
  const { photos } = call.deps
  const undo = async () => {
    for (const { key } of rows) await photos.delete(key)
  }
  return {
    id: rows[0]?.id ?? '',
    docket,
    placed,
    writes: [...writes, ...rows.map(insertPhoto)],
    before: async () => {
      try {
        for (const { row, bytes } of taken) await photos.put(row.key, bytes, row.mime)
      } catch (error) {
        // One of two that was put would stay behind without a row, out of reach of an erasure.
        await undo()
        throw error
      }
    },
    undo,
  }
}

/**
 * Takes a picture of the customer's back while the enquiry is being told. What was sent, and what
 * the studio took itself, is what an estimate and a record stand on. Throws 404 or 409.
 */
export const removePhoto = (call: Call<unknown, unknown, Load>, desk: Desk, id: string) => {
  const photo = desk.photos.find((p) => p.id === id)
  if (photo?.by !== 'customer') throw new Problem('unknown')
  if (!isOpenToAnswers(desk.docket.state))
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.sent' },
      more: { state: desk.docket.state },
    })
  const { writes, docket } = write(call, desk, [{ kind: 'photo-removed', body: { photo: id } }])
  return {
    docket,
    writes: [...writes, deletePhoto(desk.id, id).stmt],
    after: () => call.deps.photos.delete(photo.key),
  }
}
