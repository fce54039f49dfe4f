import { paths } from '../../pages/paths'
import { openDesk } from '../acts/desk'
import { questionOf } from '../acts/enquiry'
import { addPhoto, removePhoto } from '../acts/photo'
import { Problem } from '../http/problem'
import { type Route, route } from '../route'
import { conversation, load } from './conversation-render'
import { fieldErrors, formOf, orAgain, seeOther } from './page'

export const photoRoutes: readonly Route[] = [
  route({
    id: 'page.photo.add',
    face: 'page',
    method: 'POST',
    path: '/e/:id/photos',
    rights: 'customer',
    summary: 'Add a picture.',
    body: 'multipart',
    answers: { 303: null },
    again: true,
    rate: { name: 'photo', perMinute: 120 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      return orAgain(
        async () => {
          const done = await addPhoto(call, desk, formOf(call))
          return seeOther(paths.question(desk.id, 'photos'), {
            writes: done.writes,
            before: done.before,
            undo: done.undo,
          })
        },
        (problem) =>
          conversation(call, desk, {
            question: questionOf('photos'),
            errors: fieldErrors(call, problem),
            status: 422,
          }),
      )
    },
  }),
  route({
    id: 'page.photo.read',
    face: 'page',
    method: 'GET',
    path: '/e/:id/photos/:photo',
    rights: 'customer',
    summary: 'One of the pictures.',
    answers: { 200: 'other' },
    load,
    act: async (call) => {
      const photo = openDesk(call.loaded).photos.find((p) => p.id === call.params.photo)
      const body = photo ? await call.deps.photos.get(photo.key) : null
      if (!photo || body === null) throw new Problem('unknown')
      return { status: 200, bytes: { body, mime: photo.mime } }
    },
  }),
  route({
    id: 'page.photo.remove',
    face: 'page',
    method: 'POST',
    path: '/e/:id/photos/:photo/removal',
    rights: 'customer',
    summary: 'Take a picture back.',
    body: 'form',
    answers: { 303: null },
    again: true,
    rate: { name: 'photo', perMinute: 120 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const done = removePhoto(call, desk, call.params.photo ?? '')
      return seeOther(paths.question(desk.id, 'photos'), { writes: done.writes, after: done.after })
    },
  }),
]
