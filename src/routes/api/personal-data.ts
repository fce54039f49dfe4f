import { checkMatch, deskLoad, openDesk } from '../acts/desk'
import { eraseLoad, eraseMine } from '../acts/erasing'
import { dataReport } from '../acts/my-data'
import { type Route, route } from '../route'
import { anyAnswer } from './shapes'

export const personalDataRoutes: readonly Route[] = [
  route({
    id: 'docket.personal-data',
    face: 'api',
    method: 'GET',
    path: '/api/v1/dockets/:id/personal-data',
    rights: 'owner',
    summary: 'Everything kept of one docket that tells whose it is, why, and how long.',
    answers: { 200: anyAnswer },
    load: ({ params }) => deskLoad(params.id ?? ''),
    act: ({ loaded, studio }) => ({ status: 200, json: dataReport(openDesk(loaded), studio) }),
  }),
  route({
    id: 'docket.erase-personal',
    face: 'api',
    method: 'DELETE',
    path: '/api/v1/dockets/:id/personal-data',
    rights: 'owner',
    summary: 'Delete what tells who a customer is; the figures stay.',
    answers: { 204: null },
    match: 'required',
    load: ({ params }) => eraseLoad(params.id ?? ''),
    act: (call) => {
      const desk = openDesk(call.loaded)
      checkMatch(call, desk)
      return { status: 204, ...eraseMine(call, desk, call.loaded.estimates) }
    },
  }),
]
