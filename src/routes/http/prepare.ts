import type { Bucket } from '../../store/rates'
import type { Deps } from '../deps'
import type { Input, Route } from '../route'
import { addressOf } from './address'
import { heldKeys } from './cookies'
import { type Shown, shown } from './credentials'
import { mayChange } from './guard'
import { Problem } from './problem'
import { readBody, readQuery } from './read-input'
import { keyOf, type RequestKey } from './request-key'

export type Request1 = {
  readonly request: Request
  readonly params: Readonly<Record<string, string>>
  readonly remote: string | null
}

/** A request as read: who shows what, the input or what is wrong with it, its key and its bucket. */
export type Prepared = {
  readonly input: Omit<Input<unknown, unknown>, 'who'>
  readonly shown: Shown
  /** What is wrong with the input; told only to those who may use the route. */
  readonly wrong: Problem | null
  readonly key: RequestKey | null
  readonly match: number | null
  readonly origin: string
  readonly secure: boolean
  /** What the request counts for by its address, and what the docket it holds the key of does. */
  readonly byAddress: readonly Bucket[]
  readonly byDocket: readonly Bucket[]
}

const matchOf = (route: Route, request: Request): number | null => {
  if (route.match === undefined) return null
  const header = request.headers.get('if-match')
  if (header === null) {
    if (route.match === 'required' && route.face === 'api') throw new Problem('if-match-missing')
    return null
  }
  const rev = /^"(\d{1,9})"$/.exec(header.trim())
  if (!rev) throw new Problem('stale')
  return Number(rev[1])
}

/** A fault of the input, kept until it is known whether the caller may hear of it. */
const orWrong = async <T>(read: () => Promise<T>): Promise<T | Problem> => {
  try {
    return await read()
  } catch (error) {
    if (error instanceof Problem) return error
    throw error
  }
}

/** Who shows nothing where something must be shown is turned away before the body is read. */
const turnAway = (route: Route, s: Shown): void => {
  if (route.rights === 'public' || s.kind !== 'none') return
  throw new Problem(route.rights === 'customer' ? 'not-yours' : 'signed-out')
}

const bucketOf = ({ rate }: Route, of: string, window: number): readonly Bucket[] =>
  rate ? [{ name: `${rate.name}:${of}`, window, most: rate.perMinute }] : []

/** Reads a request without asking the database. Throws what may be said to anybody. */
export const prepare = async (route: Route, r: Request1, deps: Deps): Promise<Prepared> => {
  const url = new URL(r.request.url)
  const origin = deps.config.publicOrigin ?? url.origin
  const secure = origin.startsWith('https:')
  if (!mayChange(r.request, [origin, url.origin])) throw new Problem('forbidden-origin')
  const address = addressOf(r, deps.config)
  if (route.method !== 'GET') deps.gate?.enter(address, deps.now())
  const s = await shown(route, r.request, r.params.id, deps, secure)
  turnAway(route, s)
  const spend = (bytes: number): void => deps.gate?.spend(address, bytes, deps.now())
  const read = await orWrong(async () => {
    const query = readQuery(route, url)
    const body = await readBody(route, r.request, spend)
    const key = await keyOf(route, r, s, body, address)
    return { query, body, key, match: matchOf(route, r.request) }
  })
  const good = read instanceof Problem ? null : read
  const window = Math.floor(deps.now() / 60_000)
  return {
    input: {
      params: r.params,
      query: good?.query,
      body: good?.body,
      search: url.searchParams,
      held: route.lists ? heldKeys(r.request, secure) : [],
      now: deps.now(),
    },
    shown: s,
    wrong: read instanceof Problem ? read : null,
    key: good?.key ?? null,
    match: good?.match ?? null,
    origin,
    secure,
    byAddress: bucketOf(route, address, window),
    byDocket: route.rights === 'customer' ? bucketOf(route, `@${r.params.id}`, window) : [],
  }
}
