import type { Stmt } from '../../store/db'
import { upsertPerson } from '../../store/people'
import { foldPlate } from '../../store/search-words'
import { insertText } from '../../store/texts'
import type { Words } from '../../words/render'
import { invalid, tooLong } from '../http/problem'
import type { Call, Load } from '../route'
import { checkMatch, type Desk, keepText, type Written, write } from './desk'

/** Asked on every docket: a car that comes again is found by it. */
export const PLATE = 'plate'
/** Characters an answer may have. */
const MOST = 500
const ALWAYS = (words: Words) => [{ id: PLATE, prompt: words.say('page.open.plate') }]

/**
 * Keeps answers to the studio's own questions, by question; what is empty or unchanged writes no line.
 * `at` is where a fault points. Throws 412, 422 for too long a text and for a question the settings do not have.
 */
export const answerOwn = (
  call: Call<unknown, unknown, Load>,
  desk: Desk,
  given: Readonly<Record<string, string>>,
  at = '/answers/',
) => {
  checkMatch(call, desk)
  const asked = [...ALWAYS(call.studio.words), ...(call.studio.profile.ownQuestions ?? [])]
  const written: Written[] = []
  const texts: Stmt[] = []
  for (const [question, answer] of Object.entries(given)) {
    const was = desk.docket.ownAnswers[question]
    const prompt = asked.find((q) => q.id === question)?.prompt ?? was?.prompt
    if (prompt === undefined)
      throw invalid([{ pointer: `${at}${question}`, code: 'ERR_UNKNOWN_QUESTION' }])
    const text = answer.trim()
    if (text.length > MOST) throw invalid([tooLong(`${at}${question}`, text, MOST)])
    if (text === '' || (was?.text && desk.texts.get(was.text) === text)) continue
    const { ref, row } = keepText(call, desk.id, 'answer.own', text)
    written.push({ kind: 'answered-own', body: { question, prompt, text: ref } })
    texts.push(insertText(row))
    const person = desk.people[0]
    if (question === PLATE && person)
      texts.push(upsertPerson({ ...person, plate: foldPlate(text) || null }))
  }
  if (written.length === 0) return { docket: desk.docket, writes: [] as readonly Stmt[] }
  const { writes, docket } = write(call, desk, written)
  return { docket, writes: [...writes, ...texts] }
}
