import type { Access } from '../../store/accesses'
import { insertAccess, isLive, revokeAccess, tradeLink } from '../../store/accesses'
import type { Stmt } from '../../store/db'
import { deleteSession, insertSession } from '../../store/sessions'
import { setCookie, studioCookie } from '../http/cookies'
import { ABSOLUTE_MS } from '../http/credentials'
import { newKey, sha256 } from '../http/keys'
import { Problem } from '../http/problem'
import type { Call, Load, Who } from '../route'

/** A sign-in link may be traded once within this time. */
export const LINK_MS = 10 * 60_000

/** `owner:` or `bench:` before the label of a sign-in link says what it will make. */
const rightsOf = (label: string): 'owner' | 'bench' =>
  label.startsWith('bench:') ? 'bench' : 'owner'
const nameOf = (label: string): string => label.replace(/^(owner|bench):/, '')

export const signInRow = (
  hash: string,
  rights: 'owner' | 'bench',
  name: string,
  now: number,
): Access => ({
  hash,
  kind: 'signin',
  docket: null,
  label: `${rights}:${name}`,
  createdAt: now,
  expiresAt: now + LINK_MS,
  usedAt: null,
  revokedAt: null,
  parent: null,
})

/** A link for a further device: its code is shown once. */
export const makeLink = async (
  call: Pick<Call<unknown, unknown, Load>, 'deps' | 'now' | 'origin'>,
  rights: 'owner' | 'bench',
  name: string,
): Promise<{ readonly code: string; readonly link: string; readonly writes: readonly Stmt[] }> => {
  const code = newKey(call.deps.random)
  const row = signInRow(await sha256(code), rights, name, call.now)
  return { code, link: `${call.origin}/in/${code}`, writes: [insertAccess(row)] }
}

/** The key to the studio somebody is here with; null for the key of the process itself. */
export const accessOf = (who: Who): string | null =>
  who.kind === 'owner' || who.kind === 'bench' ? (who.access ?? null) : null

/** Ends a browser's session and with it the device it was let in as; a bearer key stays. */
export const signOut = (who: Who, now: number): readonly Stmt[] =>
  (who.kind === 'owner' || who.kind === 'bench') && who.session
    ? [deleteSession(who.session), ...(who.access ? [revokeAccess(who.access, now).stmt] : [])]
    : []

/** Trades a link for a device and a session; once, and only while it holds. */
export const tradeForSession = async (
  call: Pick<Call<unknown, unknown, Load>, 'deps' | 'now' | 'secure'>,
  found: Access | undefined,
): Promise<{ readonly cookie: string; readonly writes: readonly Stmt[] }> => {
  if (found?.kind !== 'signin' || !isLive(found, call.now)) throw new Problem('signed-out')
  const rights = rightsOf(found.label)
  const device = await sha256(newKey(call.deps.random))
  const key = newKey(call.deps.random)
  return {
    cookie: setCookie(studioCookie(call.secure), key, {
      secure: call.secure,
      seconds: Math.floor(ABSOLUTE_MS / 1000),
      strict: false,
    }),
    writes: [
      ...tradeLink(found.hash, {
        hash: device,
        kind: rights,
        docket: null,
        label: nameOf(found.label),
        createdAt: call.now,
        expiresAt: null,
        usedAt: null,
        revokedAt: null,
      }),
      insertSession({
        hash: await sha256(key),
        access: device,
        rights,
        createdAt: call.now,
        seenAt: call.now,
        expiresAt: call.now + ABSOLUTE_MS,
      }),
    ],
  }
}
