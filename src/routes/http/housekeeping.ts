import type { Stmt } from '../../store/db'
import { deleteExpiredKeys } from '../../store/idempotency'
import { deleteOldRates } from '../../store/rates'
import { deleteEndedSessions, touchSession } from '../../store/sessions'
import type { Shown } from './credentials'

/** What has served its time: taken out with the first counted request of an address and minute. */
export const sweep = (now: number, window: number): readonly Stmt[] => [
  deleteOldRates(window - 1),
  deleteExpiredKeys(now),
  deleteEndedSessions(now),
]

/** A session is noted as in use about once an hour, so that it ends by idleness only. */
const SEEN_MS = 3_600_000
export const seen = (s: Shown, row: unknown, now: number): readonly Stmt[] => {
  if (s.kind !== 'session') return []
  const { seenAt } = row as { readonly seenAt: number }
  return now - seenAt > SEEN_MS ? [touchSession(s.hash, now)] : []
}
