import { isLive, selectAccess } from '../../store/accesses'
import type { Query } from '../../store/db'
import { selectSession } from '../../store/sessions'
import type { Deps } from '../deps'
import type { Route, Who } from '../route'
import { docketCookie, readCookie, studioCookie } from './cookies'
import { sameHash, sha256 } from './keys'
import { Problem } from './problem'

/** A browser of the studio is signed out after this long without a request, and after this in all. */
export const IDLE_MS = 14 * 86_400_000
export const ABSOLUTE_MS = 90 * 86_400_000

/** What the request shows, hashed; the key itself goes no further. */
export type Shown =
  | { readonly kind: 'none' }
  | { readonly kind: 'owner-key' }
  | { readonly kind: 'access'; readonly hash: string }
  | { readonly kind: 'session'; readonly hash: string }

const bearer = (request: Request): string | null => {
  const header = request.headers.get('authorization')
  const match = header === null ? null : /^Bearer ([A-Za-z0-9_-]{16,200})$/.exec(header)
  return match?.[1] ?? null
}

export const shown = async (
  route: Route,
  request: Request,
  docket: string | undefined,
  deps: Deps,
  secure: boolean,
): Promise<Shown> => {
  if (route.rights === 'public') return { kind: 'none' }
  const key = bearer(request)
  if (route.rights === 'customer') {
    const own = key ?? readCookie(request, docketCookie(docket ?? '', secure))
    return own === null ? { kind: 'none' } : { kind: 'access', hash: await sha256(own) }
  }
  if (key !== null) {
    const hash = await sha256(key)
    const owner = deps.config.ownerKey
    if (owner !== null && sameHash(hash, await sha256(owner))) return { kind: 'owner-key' }
    return { kind: 'access', hash }
  }
  const cookie = readCookie(request, studioCookie(secure))
  return cookie === null ? { kind: 'none' } : { kind: 'session', hash: await sha256(cookie) }
}

/** The query that settles who this is; null when none is needed. */
export const credentialQuery = (s: Shown, now: number): Query<unknown> | null => {
  if (s.kind === 'access') return selectAccess(s.hash)
  if (s.kind === 'session') return selectSession(s.hash, now, now - IDLE_MS)
  return null
}

type AccessRow = ReturnType<ReturnType<typeof selectAccess>['map']>[number]
type SessionRow = ReturnType<ReturnType<typeof selectSession>['map']>[number]

/** Who the request is from. Throws 401 or 404 where the route's rights are not met. */
export const identify = (
  route: Route,
  s: Shown,
  rows: readonly unknown[],
  docket: string | undefined,
  now: number,
): Who => {
  if (route.rights === 'public') return { kind: 'nobody' }
  if (route.rights === 'customer') {
    const row = rows[0] as AccessRow | undefined
    const fits = row?.kind === 'customer' && row.docket === docket && isLive(row, now)
    if (!fits || docket === undefined) throw new Problem('not-yours')
    return { kind: 'customer', docket, access: row.hash }
  }
  const who = studioWho(s, rows, now)
  if (who === null) throw new Problem('signed-out')
  if (route.rights === 'owner' && who.kind !== 'owner') throw new Problem('not-allowed')
  return who
}

const studioWho = (s: Shown, rows: readonly unknown[], now: number): Who | null => {
  if (s.kind === 'owner-key') return { kind: 'owner', label: 'owner key' }
  if (s.kind === 'access') {
    const row = rows[0] as AccessRow | undefined
    if (!row || !isLive(row, now) || (row.kind !== 'bench' && row.kind !== 'owner')) return null
    return { kind: row.kind, label: row.label, access: row.hash }
  }
  if (s.kind === 'session') {
    const row = rows[0] as SessionRow | undefined
    if (!row) return null
    return { kind: row.rights, label: row.rights, session: row.hash, access: row.access }
  }
  return null
}
