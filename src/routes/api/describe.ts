import { openapi } from '../openapi'
import { type Route, route } from '../route'
import { anyAnswer } from './shapes'

/** The routes that describe the others. */
export const describeRoutes = (routes: readonly Route[]): readonly Route[] => [
  route({
    id: 'openapi',
    face: 'api',
    method: 'GET',
    path: '/openapi.json',
    rights: 'public',
    summary: 'This description, as OpenAPI 3.1.',
    answers: { 200: anyAnswer },
    act: ({ origin }) => ({ status: 200, json: openapi(routes, origin) }),
  }),
]
