import type { State } from '../../docket/states'
import type { Call, Load } from '../route'
import type { Desk } from './desk'
import { freshLink } from './fresh-link'
import { type MoveGiven, move } from './moving'

/** Moves a docket; for what the customer should hear of there is a message with a private link. */
export const moveAndTell = async (
  call: Call<unknown, unknown, Load>,
  desk: Desk,
  to: State,
  why: string | undefined,
  more: MoveGiven = {},
) => {
  const done = move(call, desk, to, why, more)
  if (to !== 'look-over' && to !== 'turned-down') return { ...done, message: null }
  if (to === 'look-over' && !more.lookOver) return { ...done, message: null }
  const { link, access } = await freshLink(call, desk.id, to)
  const { words, profile } = call.studio
  const message = words.say(`message.${to}`, {
    studio: profile.name,
    reference: desk.docket.reference ?? '',
    link,
    minutes: more.lookOver?.minutes ?? 0,
    price: words.say('message.amount', { amount: more.lookOver?.amount ?? 0 }),
  })
  return { ...done, message, writes: [...done.writes, access] }
}
