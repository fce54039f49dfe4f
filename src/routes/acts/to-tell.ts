import type { ToTell } from '../../docket/to-tell'
import { Problem } from '../http/problem'
import { studioInMoney } from '../http/studio'
import type { Call, Load } from '../route'
import { checkMatch, type Desk, write } from './desk'
import { freshLink } from './fresh-link'

type Any = Call<unknown, unknown, Load>

const paramsOf = (call: Any, desk: Desk, t: ToTell): Record<string, string | number> => {
  const { docket } = desk
  const { words } = studioInMoney(
    call.studio,
    docket.sent?.offer.currency ?? call.studio.profile.currency,
    call.deps.catalogues,
  )
  const amount = (minor: number): string => words.say('message.amount', { amount: minor })
  switch (t.what) {
    case 'quote':
      return {
        total: amount(docket.sent?.offer.total ?? 0),
        until: docket.sent?.validUntil ?? '',
      }
    case 'question':
      return { question: words.say(`q.${t.about}.prompt`) }
    case 'look-over':
      return {
        minutes: docket.moved?.lookOver?.minutes ?? 0,
        price: amount(docket.moved?.lookOver?.amount ?? 0),
      }
    case 'extra': {
      const extra = docket.extras.find((e) => e.extra === t.about)
      return { total: amount((extra?.amount ?? 0) + (extra?.tax ?? 0)) }
    }
    case 'day': {
      const minute = docket.dated?.startMinute
      return {
        date: docket.dated?.start ?? '',
        at: minute === undefined ? '' : words.say('days.at', { time: minute }),
        ready: docket.dated?.readyCautious.slice(0, 10) ?? '',
      }
    }
    default:
      return {}
  }
}

const KEYS: Readonly<Record<ToTell['what'], string>> = {
  quote: 'message.quote',
  question: 'message.ask',
  'look-over': 'message.look-over',
  'turned-down': 'message.turned-down',
  reply: 'message.reply',
  extra: 'message.extra',
  day: 'message.day',
  smaller: 'message.smaller',
}

/**
 * The message for one thing that is to be told, with a new private link in it. Nothing leaves by
 * this: the studio sends it its own way. Throws 404 where it was told meanwhile.
 */
export const messageFor = async (call: Any, desk: Desk, line: string) => {
  const t = desk.docket.toTell.find((each) => each.line === line)
  if (!t) throw new Problem('unknown')
  const { link, access } = await freshLink(call, desk.id, t.what)
  const { words, profile } = call.studio
  const text = words.say(KEYS[t.what], {
    studio: profile.name,
    reference: desk.docket.reference ?? '',
    link,
    ...paramsOf(call, desk, t),
  })
  return { text, what: t.what, writes: [access] }
}

export const HOW = ['message', 'phone', 'in-person'] as const
export type How = (typeof HOW)[number]

/** Writes down that something was told, and how. What is not on the list any more is left alone. */
export const markTold = (call: Any, desk: Desk, lines: readonly string[], how: How) => {
  checkMatch(call, desk)
  const open = lines.filter((id) => desk.docket.toTell.some((t) => t.line === id))
  if (open.length === 0) return { docket: desk.docket, writes: [] }
  return write(call, desk, [{ kind: 'told', body: { lines: open, how } }])
}
