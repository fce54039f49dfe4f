import type { Doubt } from '../../docket/kinds'
import { sameHash, sha256 } from '../http/keys'
import { Problem } from '../http/problem'
import type { Call, Form, Load } from '../route'
import { checkMatch, type Desk, write } from './desk'

type Any = Call<unknown, unknown, Load>

/** A field people do not see, and the signed time at which the form was made. */
export const TRAP = { field: 'fax', timeField: 'made' } as const

/** Nobody types a name and an address sooner, answers a whole script sooner, or looks at a form longer. */
export const LIMITS = { formMs: 2000, wholeMs: 6000, oldMs: 7 * 86_400_000 } as const

/** Only the server knows the id of a docket's first line, so that only it can sign. */
const sign = (desk: Desk, time: string): Promise<string> =>
  sha256(`${desk.lines[0]?.id ?? ''} ${desk.id} ${time}`)

/** The time a form is made, in a way that nobody else can write. */
export const signedTime = async (desk: Desk, now: number): Promise<string> =>
  `${now}.${await sign(desk, String(now))}`

/** The time (ms) that was signed; null when it was not signed here. */
const readTime = async (desk: Desk, typed: string | null): Promise<number | null> => {
  const [, time = '', hash = ''] = /^(\d{1,15})\.([0-9a-f]{64})$/.exec(typed ?? '') ?? []
  return time !== '' && sameHash(hash, await sign(desk, time)) ? Number(time) : null
}

/**
 * Why the form may not have been filled by a person; empty when it was. Password managers fill hidden
 * fields and people leave pages open, so nothing is refused for any of it: it only waits apart.
 */
export const doubtsOf = async (
  desk: Desk,
  form: Pick<Form, 'get'>,
  now: number,
): Promise<readonly Doubt[]> => {
  if (desk.docket.from === 'studio') return []
  const made = await readTime(desk, form.get(TRAP.timeField))
  const fast = made !== null && now - made < LIMITS.formMs
  return [
    ...(form.get(TRAP.field) ? (['hidden-field'] as const) : []),
    ...(made === null ? (['unsigned'] as const) : []),
    ...(fast || now - desk.docket.openedAt < LIMITS.wholeMs ? (['too-fast'] as const) : []),
    ...(made !== null && now - made > LIMITS.oldMs ? (['too-old'] as const) : []),
  ]
}

/** The studio says that a doubted enquiry is genuine; throws 409 where nobody doubts it. */
export const vouch = (call: Any, desk: Desk) => {
  checkMatch(call, desk)
  if (!desk.docket.doubtful)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.not-doubted' },
      more: { state: desk.docket.state },
    })
  return write(call, desk, [{ kind: 'vouched', body: {} }])
}
