import type { Db, Query, Rows, Stmt } from '../../store/db'
import { isConflictOn, isDbError } from '../../store/db-error'
import { findKey, type KeptAnswer, keyTaken, reserveKey } from '../../store/idempotency'
import { lineIdTaken, lineSeqTaken } from '../../store/lines'
import { countRate } from '../../store/rates'
import { selectSettings } from '../../store/settings'
import type { Deps } from '../deps'
import type { Call, Form, Input, Outcome, Route, Who } from '../route'
import { addressOf } from './address'
import { credentialQuery, identify, type Shown, shown } from './credentials'
import { mayChange } from './guard'
import { keptUnder, seal, unseal } from './kept-answer'
import { newId, sha256 } from './keys'
import { Problem } from './problem'
import { readBody, readQuery } from './read-input'
import { studioOf } from './studio'

/** How long a request may be repeated under its key and get the first answer. */
export const KEY_MS = 24 * 3_600_000
const TRIES = 6

export type Request1 = {
  readonly request: Request
  readonly params: Readonly<Record<string, string>>
  readonly remote: string | null
}

type Prepared = {
  readonly input: Omit<Input<unknown, unknown>, 'who'>
  readonly shown: Shown
  readonly key: {
    readonly scope: string
    readonly key: string
    readonly raw: string
    readonly print: string
  } | null
  readonly match: number | null
  readonly origin: string
  readonly secure: boolean
  readonly bucket: { readonly name: string; readonly window: number } | null
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

/** The key of a request that may be sent twice: the header of an API call, the hidden field of a form. */
const givenKey = async (route: Route, request: Request, body: unknown): Promise<string | null> => {
  if (route.method !== 'POST' || (route.face === 'page' && route.rights === 'public')) return null
  if (route.face === 'page') {
    const form = body as Form | undefined
    const once = form?.get('once') ?? null
    // The same page may send another answer after going back; only the same answer counts once.
    return form && once ? sha256(JSON.stringify(form.entries)) : null
  }
  const header = request.headers.get('idempotency-key')
  if (header === null) return null
  const text = header.trim()
  const quoted = /^"([\x20-\x7e]{1,200})"$/.exec(text) ?? /^([\w.:-]{1,200})$/.exec(text)
  if (!quoted?.[1])
    throw new Problem('invalid', { faults: [{ pointer: '', code: 'ERR_IDEMPOTENCY_KEY' }] })
  return quoted[1]
}

const keyOf = async (
  route: Route,
  { request, params }: Request1,
  s: Shown,
  body: unknown,
): Promise<Prepared['key']> => {
  const key = await givenKey(route, request, body)
  if (key === null) return null
  const who = s.kind === 'access' || s.kind === 'session' ? s.hash : s.kind
  const scope = `${route.id}:${Object.values(params).join('/')}:${who}`
  const print = await sha256(JSON.stringify(route.face === 'page' ? key : (body ?? null)))
  return { scope, key: await keptUnder(key), raw: key, print }
}

const prepare = async (route: Route, r: Request1, deps: Deps): Promise<Prepared> => {
  const url = new URL(r.request.url)
  const origin = deps.config.publicOrigin ?? url.origin
  const secure = origin.startsWith('https:')
  if (!mayChange(r.request, [origin, url.origin])) throw new Problem('forbidden-origin')
  const query = readQuery(route, url)
  const body = await readBody(route, r.request)
  const s = await shown(route, r.request, r.params.id, deps, secure)
  const window = Math.floor(deps.now() / 60_000)
  return {
    input: { params: r.params, query, body },
    shown: s,
    key: await keyOf(route, r, s, body),
    match: matchOf(route, r.request),
    origin,
    secure,
    bucket: route.rate ? { name: `${route.rate.name}:${addressOf(r, deps.config)}`, window } : null,
  }
}

const NOBODY: Who = { kind: 'nobody' }

const peekRate = (bucket: string, window: number): Query<number> => ({
  stmt: { sql: 'select count from rate where bucket = ? and "window" = ?', args: [bucket, window] },
  map: (rows) => rows.map((row) => Number(row.count)),
})

const replayed = async (kept: KeptAnswer, key: NonNullable<Prepared['key']>): Promise<Outcome> => {
  if (kept.fingerprint !== key.print) throw new Problem('key-reused')
  if (kept.status === null || kept.body === null) throw new Problem('key-running')
  const first = await unseal(kept.body, key.raw)
  return {
    ...first,
    status: kept.status,
    headers: { ...first.headers, 'idempotency-replayed': 'true' },
  }
}

const writing = async (
  p: Prepared,
  o: Outcome,
  now: number,
  random: Deps['random'],
): Promise<readonly Stmt[]> => [
  ...(p.key
    ? reserveKey({
        scope: p.key.scope,
        key: p.key.key,
        fingerprint: p.key.print,
        status: o.status,
        body: await seal(o, p.key.raw, random),
        at: now,
        expiresAt: now + KEY_MS,
      })
    : []),
  ...(p.bucket ? [countRate(p.bucket.name, p.bucket.window).stmt] : []),
  ...(o.writes ?? []),
]

const once = async (route: Route, p: Prepared, db: Db, deps: Deps): Promise<Outcome> => {
  const now = deps.now()
  const load = (await route.load?.({ ...p.input, who: NOBODY })) ?? {}
  const fixed = [
    credentialQuery(p.shown, now),
    selectSettings(),
    p.key ? findKey(p.key.scope, p.key.key, now) : null,
    p.bucket ? peekRate(p.bucket.name, p.bucket.window) : null,
  ]
  const names = Object.keys(load)
  const queries = [...fixed, ...names.map((n) => load[n] ?? null)]
  const asked = queries.filter((q): q is Query<unknown> => q !== null)
  const rows: Rows = await db.read(asked.map((q) => q.stmt))
  let at = 0
  const results = queries.map((q) => (q === null ? [] : q.map(rows[at++] ?? [])))
  const who = identify(route, p.shown, results[0] ?? [], p.input.params.id, now)
  if (p.bucket && route.rate && Number(results[3]?.[0] ?? 0) >= route.rate.perMinute)
    throw new Problem('too-many', { retryAfter: 60 - Math.floor((now % 60_000) / 1000) })
  const kept = results[2]?.[0] as KeptAnswer | undefined
  if (kept && p.key) return replayed(kept, p.key)
  const loaded = Object.fromEntries(names.map((n, i) => [n, results[fixed.length + i]]))
  const call: Call<unknown, unknown, Record<string, Query<unknown>>> = {
    ...p.input,
    who,
    loaded: loaded as never,
    studio: studioOf(results[1]?.[0] as never, now),
    now,
    origin: p.origin,
    secure: p.secure,
    match: p.match,
    deps,
    newId: () => newId(deps.random),
  }
  const outcome = await route.act(call as never)
  await outcome.before?.()
  const stmts = await writing(p, outcome, now, deps.random)
  if (stmts.length > 0) await db.write(stmts, p.key ? { retry: true } : {})
  await outcome.after?.().catch((error: unknown) => deps.fault(route.id, error))
  return outcome
}

/** What a database error means to the caller; anything else is a fault of ours. */
const toProblem = (error: unknown): unknown => {
  if (isConflictOn(error, lineSeqTaken)) return new Problem('stale')
  if (isDbError(error, 'busy') || isDbError(error, 'unavailable'))
    return new Problem('away', { retryAfter: 5 })
  return error
}

/**
 * Runs one request: one read batch, the decision, one write batch. When somebody else wrote in
 * between, the decision is made again on the new state, unless the caller named the state it saw.
 */
export const run = async (route: Route, r: Request1, deps: Deps): Promise<Outcome> => {
  const p = await prepare(route, r, deps)
  const db = deps.openDb()
  try {
    for (let tries = 1; ; tries += 1) {
      try {
        return await once(route, p, db, deps)
      } catch (error) {
        const raced =
          (isConflictOn(error, lineSeqTaken) && p.match === null && route.again === true) ||
          isConflictOn(error, lineIdTaken) ||
          (isConflictOn(error, keyTaken) && p.key !== null)
        if (raced && tries < TRIES) continue
        throw toProblem(error)
      }
    }
  } finally {
    await db.close()
  }
}
