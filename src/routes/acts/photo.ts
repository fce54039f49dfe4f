import { isOpenToAnswers } from '../../docket/states'
import { deletePhoto, insertPhoto, type Photo } from '../../store/photos'
import { invalid, Problem } from '../http/problem'
import type { Call, Form, Load } from '../route'
import { appendLines, byOf, type Desk, stamp, write } from './desk'
import { cleanPicture } from './picture'

/** As many pictures the customer may add, and as many again the studio. */
export const MOST_PHOTOS = 40

const SUBJECT = /^[a-z0-9-]{1,40}$/

/** Takes a picture: checked by its signature, stripped of what it tells besides the picture. */
export const addPhoto = async (call: Call<unknown, unknown, Load>, desk: Desk, form: Form) => {
  const file = form.file('camera') ?? form.file('file')
  if (!file) throw invalid([{ pointer: '/file', code: 'ERR_FILE_MISSING' }])
  const subject = form.get('subject') ?? 'other'
  if (!SUBJECT.test(subject)) throw invalid([{ pointer: '/subject', code: 'ERR_VALUE' }])
  const own = desk.photos.filter((p) => (p.by === 'customer') === (byOf(call.who) === 'customer'))
  if (own.length >= MOST_PHOTOS) throw invalid([{ pointer: '/file', code: 'ERR_FILE_COUNT' }])
  const cleaned = cleanPicture(new Uint8Array(await file.arrayBuffer()))
  if (!cleaned.ok) throw invalid([{ pointer: '/file', code: cleaned.error }])
  const { bytes, mime, width, height, ending } = cleaned.value
  const id = call.newId()
  const key = `${desk.id}/${id}.${ending}`
  const lines = stamp(call, [{ kind: 'photo-added', body: { photo: id, subject } }])
  const { writes, docket, placed } = appendLines(desk.id, desk.lines, desk.head, lines)
  const row: Photo = {
    id,
    docket: desk.id,
    subject,
    mime,
    bytes: bytes.byteLength,
    width,
    height,
    key,
    at: call.now,
    by: byOf(call.who),
  }
  return {
    id,
    docket,
    placed,
    writes: [...writes, insertPhoto(row)],
    before: () => call.deps.photos.put(key, bytes, mime),
    undo: () => call.deps.photos.delete(key),
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
