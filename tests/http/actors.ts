import type { Rights, Route } from '../../src/routes/route'
import { stageOf } from './samples'
import type { Prepared } from './stages'

export const ACTORS = ['nobody', 'stranger', 'customer', 'bench', 'owner'] as const
/** stranger: the customer of another docket. */
export type Actor = (typeof ACTORS)[number]

const browser = (cookie: string) => ({ cookie, 'sec-fetch-site': 'same-origin' })
const bearer = (key: string) => ({ authorization: `Bearer ${key}` })

/** How an actor shows who it is: keys at the API, cookies at the pages; the bench only has a cookie. */
export const showing = (
  actor: Actor,
  route: Route,
  p: Prepared,
): Readonly<Record<string, string>> => {
  const { id, key } = p.dockets[stageOf(route)]
  const { other } = p.dockets
  const api = route.face === 'api'
  if (actor === 'nobody') return {}
  if (actor === 'bench') return browser(p.bench)
  if (actor === 'owner') return api ? bearer(p.ownerKey) : browser(p.owner)
  // A stranger's browser may hold its own key under the name of a docket that is not its own.
  if (actor === 'stranger') return api ? bearer(other.key) : browser(`jd-${id}=${other.key}`)
  return api ? bearer(key) : browser(`jd-${id}=${key}`)
}

/** Who may use a route, and the status that turns everybody else away. */
export const RIGHTS_TABLE: Readonly<Record<Rights, Readonly<Record<Actor, number | 'may'>>>> = {
  public: { nobody: 'may', stranger: 'may', customer: 'may', bench: 'may', owner: 'may' },
  customer: { nobody: 404, stranger: 404, customer: 'may', bench: 404, owner: 404 },
  bench: { nobody: 401, stranger: 401, customer: 401, bench: 'may', owner: 'may' },
  owner: { nobody: 401, stranger: 401, customer: 401, bench: 403, owner: 'may' },
}

/** Somebody who may, with the least rights that do. */
export const least = (route: Route): Actor => (route.rights === 'public' ? 'nobody' : route.rights)
