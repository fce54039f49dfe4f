import * as z from 'zod'
import { problemStatuses } from '../../src/routes/openapi'
import { registry } from '../../src/routes/registry'
import type { Route } from '../../src/routes/route'

const pattern = (path: string): RegExp =>
  new RegExp(`^${path.replace(/[.]/g, '\\.').replace(/:\w+/g, '[^/]+')}$`)
const known = registry.map((route) => ({ route, matches: pattern(route.path) }))

/** The route of the registry that answers a request; undefined for none. */
export const routeOf = (method: string, path: string): Route | undefined => {
  const { pathname } = new URL(path, 'http://x')
  return known.find((k) => k.route.method === method && k.matches.test(pathname))?.route
}

/** Problem details as RFC 9457 section 3.1 names the members, with our own code and faults. */
const problem = z.looseObject({
  type: z.string(),
  title: z.string().min(1),
  status: z.int(),
  code: z.string().min(1),
  requestId: z.string().min(1),
  errors: z.exactOptional(
    z
      .array(
        z.strictObject({
          // RFC 6901: nothing, or parts led by a slash with ~ only as ~0 and ~1.
          pointer: z.string().regex(/^(\/([^~/]|~[01])*)*$/),
          code: z.string().min(1),
          message: z.string().min(1),
        }),
      )
      .min(1),
  ),
})

/** What is wrong with a problem answer; null for nothing. */
const faultOfProblem = (status: number, type: string, body: string): string | null => {
  if (type !== 'application/problem+json') return `${status} as ${type}`
  const parsed = problem.safeParse(JSON.parse(body))
  if (!parsed.success) return z.prettifyError(parsed.error)
  if (parsed.data.status !== status) return `${status} calls itself ${parsed.data.status}`
  return null
}

const faultOfPage = (type: string, body: string): string | null =>
  body !== '' && type === '' ? 'a page without a type' : null

const faultOfApi = (route: Route, status: number, type: string, body: string): string | null => {
  if (status >= 400)
    return problemStatuses(route).includes(status)
      ? faultOfProblem(status, type, body)
      : `${status} is not among the documented statuses: ${body}`
  const promised = route.answers[status]
  if (promised === undefined) return `${status} is not promised`
  if (promised === null) return body === '' ? null : `${status} with a body`
  if (promised === 'other') return null
  if (type !== 'application/json') return `${status} as ${type}`
  const parsed = promised.safeParse(JSON.parse(body))
  return parsed.success ? null : `${z.prettifyError(parsed.error)}\n${body}`
}

/**
 * Holds one answer to what the registry promises: status, media type, and every member of the body
 * of the API. Throws where it differs, and for any fault of the program itself.
 */
export const checkAnswer = (method: string, path: string, answer: Response, body: string): void => {
  const route = routeOf(method, path)
  const type = answer.headers.get('content-type')?.split(';')[0] ?? ''
  const { status } = answer
  const fault =
    status === 500
      ? `a fault: ${body}`
      : route === undefined
        ? faultOfProblem(status, type, body)
        : route.face === 'page'
          ? faultOfPage(type, body)
          : faultOfApi(route, status, type, body)
  if (fault !== null) throw new Error(`${method} ${path}: ${fault}`)
}
