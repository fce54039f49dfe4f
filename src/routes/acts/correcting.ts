import type { State } from '../../docket/states'
import type { Question } from '../../intake/question'
import { insertText } from '../../store/texts'
import { invalid } from '../http/problem'
import type { Call, Load } from '../route'
import { checkMatch, type Desk, type HeadChange, keepText, write } from './desk'
import { accept, askedNow, type Given, place, yearFault } from './enquiry'
import { listFigures } from './list-figures'
import { notNow } from './revising'
import { carTitle } from './title'

const CORRECTABLE: readonly State[] = [
  'received',
  'look-over',
  'quoted',
  'agreed',
  'declined',
  'lapsed',
  'dated',
  'on-bench',
  'held',
  'come-back',
]

export const mayCorrect = (state: State): boolean => CORRECTABLE.includes(state)

/**
 * Changes an answer for the customer, with the reason; the line says who did, and the customer sees
 * it. Throws 404, 409, 412 or 422.
 */
export const correctAnswer = (
  call: Call<unknown, unknown, Load>,
  desk: Desk,
  q: Question<unknown>,
  given: Given,
  why: string | undefined,
) => {
  checkMatch(call, desk)
  if (!mayCorrect(desk.docket.state)) throw notNow(desk.docket, [])
  askedNow(desk, q)
  if (!why?.trim()) throw invalid([{ pointer: '/why', code: 'ERR_REQUIRED' }])
  const answer = accept(q, given)
  yearFault(q, answer, new Date(call.now).getUTCFullYear())
  const { held, stmts, person } = place(call, desk, q, answer)
  const answers = { ...desk.answers, [q.id]: answer }
  const { ref, row } = keepText(call, desk.id, 'answer.why', why.trim())
  const change: HeadChange = {
    title: carTitle(answers, call.studio.words),
    ...(person === null ? {} : { person }),
    ...(q.id === 'deadline' && 'value' in answer
      ? { wantedBy: answer.value as string | null }
      : {}),
    ...listFigures(call, desk, answers),
  }
  const { writes, docket } = write(
    call,
    desk,
    [{ kind: 'answered', body: { question: q.id, answer: held, why: ref } }],
    change,
  )
  return { answer, answers, docket, writes: [...writes, ...stmts, insertText(row)] }
}
