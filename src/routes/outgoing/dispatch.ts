import type { Db } from '../../store/db'
import { readAll } from '../../store/db'
import { type Hook, hookOff, selectHook } from '../../store/hooks'
import {
  claimMessages,
  deleteOldMessages,
  messageDone,
  messageFailed,
  type OutboxRow,
} from '../../store/outbox'
import { newId } from '../http/keys'
import { publicAddress } from './address'
import { signMessage } from './sign'

/** Sends one message; answers with its status, or null where no answer came in time. No redirects. */
export type Post = (
  url: string,
  headers: Readonly<Record<string, string>>,
  body: string,
) => Promise<number | null>

export type Outgoing = {
  readonly db: Db
  readonly now: () => number
  readonly random: (bytes: number) => Uint8Array
  readonly post: Post
}

const SECOND = 1000
const MINUTE = 60 * SECOND
const HOUR = 60 * MINUTE

/**
 * Waits before each further try, after the first; the last one failed is the end. The schedule the
 * standard recommends (Standard Webhooks 1.0.0, "Deliverability and reliability").
 */
export const WAITS: readonly number[] = [
  5 * SECOND,
  5 * MINUTE,
  30 * MINUTE,
  2 * HOUR,
  5 * HOUR,
  10 * HOUR,
  14 * HOUR,
  20 * HOUR,
  24 * HOUR,
]

/** Who has claimed a message keeps it this long; a sender that died gives it back by time. */
export const LEASE_MS = MINUTE
/** Messages taken in one round. */
export const ROUND = 10
const KEPT_MS = 30 * 24 * HOUR

/** When a message that failed `attempts` times is tried again; null: never. Spread by up to a tenth. */
export const nextTry = (now: number, attempts: number, chance: number): number | null => {
  const wait = WAITS[attempts - 1]
  return wait === undefined ? null : now + wait + Math.floor(wait * 0.1 * chance)
}

/** What is sent: what happened, when, and by which ids to read the rest. No personal data. */
export const bodyOf = (row: Pick<OutboxRow, 'kind' | 'payload' | 'at'>): string =>
  JSON.stringify({
    type: row.kind,
    timestamp: new Date(row.at).toISOString(),
    data: row.payload,
  })

/** Headers of a message; for a day after a renewal it is signed with the old secret as well. */
export const headersOf = async (
  hook: Hook,
  id: string,
  now: number,
  body: string,
): Promise<Readonly<Record<string, string>>> => {
  const seconds = Math.floor(now / SECOND)
  const secrets = [
    hook.secret,
    ...(hook.oldSecret !== null && (hook.oldUntil ?? 0) > now ? [hook.oldSecret] : []),
  ]
  const signatures = await Promise.all(secrets.map((s) => signMessage(s, id, seconds, body)))
  return {
    'content-type': 'application/json',
    'user-agent': 'Jambside-Webhooks',
    'webhook-id': id,
    'webhook-timestamp': String(seconds),
    'webhook-signature': signatures.join(' '),
  }
}

const GONE = 410

const deliver = async (o: Outgoing, hook: Hook, row: OutboxRow, claim: string): Promise<void> => {
  const now = o.now()
  const body = bodyOf(row)
  const address = publicAddress(hook.url)
  const status =
    'fault' in address
      ? null
      : await o.post(address.url, await headersOf(hook, row.id, now, body), body)
  if (status !== null && status >= 200 && status < 300) {
    await o.db.write([messageDone(row.id, claim).stmt])
    return
  }
  const chance = (o.random(1)[0] ?? 0) / 255
  const again = status === GONE ? null : nextTry(o.now(), row.attempts, chance)
  await o.db.write([
    messageFailed(row.id, claim, again).stmt,
    // Whoever answers that it is gone wants nothing any more (Standard Webhooks).
    ...(status === GONE ? [hookOff(o.now())] : []),
  ])
}

/**
 * One round: claims what is due and sends it, each message at least once. A message stays claimed for
 * a minute; where the sender dies meanwhile another round sends it again. Without an address nothing
 * is claimed. Gives how many were tried.
 */
export const dispatch = async (o: Outgoing): Promise<number> => {
  const now = o.now()
  const [hooks] = await readAll(o.db, [selectHook()])
  const hook = hooks[0]
  if (!hook || hook.offAt !== null) {
    await o.db.write([deleteOldMessages(now - KEPT_MS)])
    return 0
  }
  const claim = newId(o.random)
  const query = claimMessages({ claim, now, leaseUntil: now + LEASE_MS, limit: ROUND })
  const [rows] = await o.db.write([query.stmt, deleteOldMessages(now - KEPT_MS)])
  const claimed = query.map(rows ?? [])
  await Promise.all(claimed.map((row) => deliver(o, hook, row, claim)))
  return claimed.length
}
