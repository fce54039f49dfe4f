import { insertText } from '../../store/texts'
import { Problem } from '../http/problem'
import type { Call, Load } from '../route'
import { checkMatch, type Desk, keepText, write } from './desk'
import { askedNow, questionOf } from './enquiry'
import { freshLink } from './fresh-link'
import { notNow } from './revising'

export const ASKABLE: readonly string[] = ['received', 'look-over', 'quoted', 'agreed', 'dated']

/**
 * Asks the customer one question again (or for pictures): it stands open on their page with the
 * studio's words, and there is a message with a private link to send. Throws 404, 409, 412.
 */
export const askAgain = async (
  call: Call<unknown, unknown, Load>,
  desk: Desk,
  question: string,
  text: string | undefined,
) => {
  checkMatch(call, desk)
  if (!ASKABLE.includes(desk.docket.state)) throw notNow(desk.docket, [])
  const q = questionOf(question)
  if (q.kind === 'contact') throw new Problem('unknown')
  if (q.id !== 'photos') askedNow(desk, q)
  const said = text ? keepText(call, desk.id, 're-asked', text) : null
  const { writes, docket } = write(call, desk, [
    { kind: 're-asked', body: { question, ...(said ? { text: said.ref } : {}) } },
  ])
  const { link, access } = await freshLink(call, desk.id, 'asked again')
  const { words, profile } = call.studio
  const message = words.say('message.ask', {
    studio: profile.name,
    reference: desk.docket.reference ?? '',
    question: words.say(`q.${question}.prompt`),
    link,
  })
  return {
    docket,
    link,
    message,
    writes: [...writes, ...(said ? [insertText(said.row)] : []), access],
  }
}
