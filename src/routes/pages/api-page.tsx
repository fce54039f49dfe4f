import { ApiPage } from '../../pages/studio/api-page'
import { problemStatuses } from '../openapi'
import { type Route, route } from '../route'
import { VERSION } from '../version'
import { frameOf, page } from './page'

/** The readable description of the API, from the same list as the other one. */
export const apiPageRoutes = (routes: readonly Route[]): readonly Route[] => [
  route({
    id: 'page.api',
    face: 'page',
    method: 'GET',
    path: '/api',
    rights: 'public',
    summary: 'The API, readable.',
    answers: { 200: 'other' },
    act: (call) =>
      page(
        <ApiPage
          frame={frameOf(call)}
          version={VERSION}
          openApiHref="/openapi.json"
          routes={routes
            .filter((r) => r.face === 'api')
            .map((r) => ({
              id: r.id,
              method: r.method,
              path: r.path,
              rights: r.rights,
              summary: r.summary,
              statuses: [...Object.keys(r.answers).map(Number), ...problemStatuses(r)],
            }))}
        />,
      ),
  }),
]
