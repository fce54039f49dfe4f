import { insertText } from '../../store/texts'
import type { Call, Load } from '../route'
import { checkMatch, type Desk, keepText, write } from './desk'

/** Replies to the customer; the question is no longer waiting for us. */
export const reply = (call: Call<unknown, unknown, Load>, desk: Desk, text: string) => {
  checkMatch(call, desk)
  const { ref, row } = keepText(call, desk.id, 'reply', text)
  const { writes, docket } = write(call, desk, [{ kind: 'replied', body: { text: ref } }])
  return { docket, writes: [...writes, insertText(row)] }
}
