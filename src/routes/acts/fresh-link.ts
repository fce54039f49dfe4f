import { insertAccess } from '../../store/accesses'
import type { Stmt } from '../../store/db'
import { newKey, sha256 } from '../http/keys'
import type { Call, Load } from '../route'
import { CUSTOMER_KEY_MS } from './enquiry'

/** A new private link to a docket, with the statement that lets it open. */
export const freshLink = async (
  call: Pick<Call<unknown, unknown, Load>, 'deps' | 'origin' | 'now'>,
  docket: string,
  label: string,
): Promise<{ readonly link: string; readonly access: Stmt }> => {
  const key = newKey(call.deps.random)
  const access = insertAccess({
    hash: await sha256(key),
    kind: 'customer',
    docket,
    label,
    createdAt: call.now,
    expiresAt: call.now + CUSTOMER_KEY_MS,
    usedAt: null,
    revokedAt: null,
    parent: null,
  })
  return { link: `${call.origin}/l/${docket}/${key}`, access }
}
