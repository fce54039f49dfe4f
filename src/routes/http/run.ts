import { linkUsed } from '../../store/accesses'
import type { Db, Query, Rows, Stmt } from '../../store/db'
import { isConflictOn, isDbError } from '../../store/db-error'
import { findKey, type KeptAnswer, keyTaken, reserveKey } from '../../store/idempotency'
import { lineIdTaken, lineSeqTaken } from '../../store/lines'
import { type Bucket, bucketFull, countUpTo, selectBuckets } from '../../store/rates'
import { selectSettings, settingsRevTaken } from '../../store/settings'
import type { Deps } from '../deps'
import type { Call, Outcome, Route, Who } from '../route'
import { credentialQuery, identify } from './credentials'
import { seen, sweep } from './housekeeping'
import { seal, unseal } from './kept-answer'
import { newId } from './keys'
import { type Prepared, prepare, type Request1 } from './prepare'
import { Problem } from './problem'
import { isLarge } from './read-input'
import type { RequestKey } from './request-key'
import { studioOf } from './studio'

/** How long a request may be repeated under its key and get the first answer. */
export const KEY_MS = 24 * 3_600_000
/** Devices that write to one docket at once each get their turn within this many tries. */
const TRIES = 24
/** Two references drawn alike: drawn again. */
const referenceTaken = 'head.reference'

const NOBODY: Who = { kind: 'nobody' }

const tooMany = (now: number): Problem =>
  new Problem('too-many', { retryAfter: 60 - Math.floor((now % 60_000) / 1000) })

const replayed = async (kept: KeptAnswer, key: RequestKey): Promise<Outcome> => {
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
  ...countUpTo([...p.byAddress, ...p.byDocket]),
  ...(o.writes ?? []),
]

/** Writes the batch; where it surely did not take, what was put beside it is taken back. */
const commit = async (db: Db, stmts: readonly Stmt[], p: Prepared, o: Outcome): Promise<void> => {
  try {
    await db.write(stmts, p.key ? { retry: true } : {})
  } catch (error) {
    // A taken key may be our own first try, whose answer was lost: what it put there is in use.
    const refused = isDbError(error, 'conflict') && !isConflictOn(error, keyTaken)
    if (refused || isDbError(error, 'busy')) await o.undo?.()
    throw error
  }
}

const once = async (route: Route, p: Prepared, db: Db, deps: Deps): Promise<Outcome> => {
  const now = deps.now()
  const load = p.wrong ? {} : ((await route.load?.({ ...p.input, who: NOBODY })) ?? {})
  const counted = [...p.byAddress, ...p.byDocket]
  const fixed = [
    credentialQuery(p.shown, now),
    selectSettings(),
    p.key ? findKey(p.key.scope, p.key.key, now) : null,
    counted.length > 0 ? selectBuckets(counted) : null,
  ]
  const names = Object.keys(load)
  const queries = [...fixed, ...names.map((n) => load[n] ?? null)]
  const asked = queries.filter((q): q is Query<unknown> => q !== null)
  if (p.wrong && route.rights === 'public') throw p.wrong
  const rows: Rows = await db.read(asked.map((q) => q.stmt))
  let at = 0
  const results = queries.map((q) => (q === null ? [] : q.map(rows[at++] ?? [])))
  const who = identify(route, p.shown, results[0] ?? [], p.input.params.id, now)
  if (p.wrong) throw p.wrong
  const buckets = (results[3] ?? []) as ReturnType<ReturnType<typeof selectBuckets>['map']>
  const isNew = ({ name }: Bucket): boolean => buckets.every((b) => b.name !== name)
  if (buckets.some((b) => b.full)) throw tooMany(now)
  const kept = results[2]?.[0] as KeptAnswer | undefined
  if (kept && p.key) return replayed(kept, p.key)
  const loaded = Object.fromEntries(names.map((n, i) => [n, results[fixed.length + i]]))
  const call: Call<unknown, unknown, Record<string, Query<unknown>>> = {
    ...p.input,
    who,
    loaded: loaded as never,
    studio: studioOf(results[1]?.[0] as never, now, deps.catalogues),
    now,
    origin: p.origin,
    secure: p.secure,
    match: p.match,
    deps,
    newId: () => newId(deps.random),
  }
  const outcome = await route.act(call as never)
  await outcome.before?.()
  const stmts = [
    ...(await writing(p, outcome, now, deps.random)),
    ...p.byAddress.filter(isNew).flatMap(({ window }) => sweep(now, window)),
    ...seen(p.shown, results[0]?.[0], now),
  ]
  if (stmts.length > 0) await commit(db, stmts, p, outcome)
  if (outcome.scrub) await db.scrub?.()
  await outcome.after?.().catch((error: unknown) => deps.fault(route.id, error))
  return outcome
}

/** What a database error means to the caller; anything else is a fault of ours. */
const toProblem = (error: unknown, now: number): unknown => {
  if (isConflictOn(error, bucketFull)) return tooMany(now)
  if (isConflictOn(error, lineSeqTaken) || isConflictOn(error, settingsRevTaken))
    return new Problem('stale')
  if (isConflictOn(error, linkUsed)) return new Problem('signed-out')
  if (isConflictOn(error, lineIdTaken))
    return new Problem('invalid', { faults: [{ pointer: '/lines', code: 'ERR_ID_TAKEN' }] })
  if (isDbError(error, 'conflict'))
    return new Problem('invalid', { faults: [{ pointer: '', code: 'ERR_ID_TAKEN' }] })
  if (isDbError(error, 'busy') || isDbError(error, 'unavailable'))
    return new Problem('away', { retryAfter: 5 })
  return error
}

/** Lets the others through after a few collisions: an uneven wait of some milliseconds. */
const stepAside = (tries: number, deps: Deps): Promise<void> => {
  const most = tries < 3 ? 0 : 20
  const wait = Math.round(((deps.random(1)[0] ?? 0) / 255) * most)
  return new Promise((resolve) => setTimeout(resolve, wait))
}

/**
 * What is refused counts like what is done: guessing a code and sending nonsense are what the rule is
 * for. Only for the address: a docket's own count is not for strangers to fill.
 */
const countRefusal = async (p: Prepared, db: Db, error: unknown): Promise<unknown> => {
  const refused = error instanceof Problem && error.code !== 'too-many'
  if (!refused || p.byAddress.length === 0) return error
  try {
    await db.write(countUpTo(p.byAddress))
    return error
  } catch (uncounted) {
    return uncounted
  }
}

/**
 * Runs one request: one read batch, the decision, one write batch. When somebody else wrote in
 * between, the decision is made again on the new state, unless the caller named the state it saw.
 */
export const run = (route: Route, r: Request1, deps: Deps): Promise<Outcome> =>
  deps.gate
    ? deps.gate.inside(() => runOne(route, r, deps), isLarge(route, r.request))
    : runOne(route, r, deps)

const runOne = async (route: Route, r: Request1, deps: Deps): Promise<Outcome> => {
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
          isConflictOn(error, referenceTaken) ||
          (isConflictOn(error, keyTaken) && p.key !== null)
        if (raced && tries < TRIES) {
          await stepAside(tries, deps)
          continue
        }
        throw toProblem(await countRefusal(p, db, error), deps.now())
      }
    }
  } finally {
    await db.close()
  }
}
