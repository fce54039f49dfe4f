import { Hono } from 'hono'
import type { Deps } from './routes/deps'
import { base64url } from './routes/http/keys'
import { Problem } from './routes/http/problem'
import { asProblem, respond, respondProblem } from './routes/http/respond'
import { run } from './routes/http/run'
import { studioOf } from './routes/http/studio'
import { respondPageProblem } from './routes/pages/problem-page'
import { registry } from './routes/registry'
import type { Route } from './routes/route'

/** What an entry knows of a request that the request itself does not say. */
export type Outer = { readonly remote: string | null }

type Env = { Bindings: Outer }

/** Files that are the same for everybody: the entry serves them; on the edge the platform does. */
export type Assets = { readonly fetch: (request: Request) => Promise<Response | null> }

const handle = async (
  route: Route,
  request: Request,
  params: Record<string, string>,
  deps: Deps,
  remote: string | null,
): Promise<Response> => {
  const requestId = base64url(deps.random(9))
  const words = studioOf(undefined, deps.now(), deps.catalogues).words
  try {
    const outcome = await run(route, { request, params, remote }, deps)
    deps.log({ requestId, route: route.id, method: route.method, status: outcome.status })
    return respond(outcome, requestId)
  } catch (error) {
    const problem = asProblem(error)
    if (problem.code === 'fault') deps.fault(requestId, error)
    const response =
      route.face === 'api'
        ? respondProblem(problem, requestId, words)
        : respondPageProblem(problem, requestId, words, deps.manifest)
    const { status } = response
    deps.log({ requestId, route: route.id, method: route.method, status, code: problem.code })
    return response
  }
}

/** The whole program as one Hono app: everything it serves stands in the registry. */
export const createApp = (deps: Deps, assets?: Assets): Hono<Env> => {
  const app = new Hono<Env>()
  for (const route of registry) {
    app.on(route.method, route.path, (c) =>
      handle(
        route,
        c.req.raw,
        c.req.param() as Record<string, string>,
        deps,
        c.env?.remote ?? null,
      ),
    )
  }
  app.onError((error) => {
    const requestId = base64url(deps.random(9))
    deps.fault(requestId, error)
    const words = studioOf(undefined, deps.now(), deps.catalogues).words
    return respondProblem(new Problem('fault'), requestId, words)
  })
  app.notFound(async (c) => {
    const file = c.req.method === 'GET' ? await assets?.fetch(c.req.raw) : null
    if (file) return file
    const requestId = base64url(deps.random(9))
    const words = studioOf(undefined, deps.now(), deps.catalogues).words
    return respondProblem(new Problem('unknown'), requestId, words)
  })
  return app
}
