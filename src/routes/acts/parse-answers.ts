import * as z from 'zod'
import type { Answers } from '../../intake/answers'
import { parseValue } from '../../intake/parse'
import { script } from '../../intake/script'
import { type Fault, invalid } from '../http/problem'

/** Answers as the contract sends them. */
export const givenAnswers = z.record(
  z.string().max(64),
  z.union([z.strictObject({ value: z.json() }), z.strictObject({ unsure: z.literal(true) })]),
)

/** Checks each as in the conversation. Throws 422 with every fault. */
export const parseAnswers = (raw: z.infer<typeof givenAnswers>): Answers => {
  const faults: Fault[] = []
  const answers: Record<string, Answers[string]> = {}
  for (const [id, answer] of Object.entries(raw)) {
    const q = script.questions.find((each) => each.id === id)
    const at = `/answers/${id.replaceAll('~', '~0').replaceAll('/', '~1')}`
    if (!q) {
      faults.push({ pointer: at, code: 'ERR_UNKNOWN_QUESTION' })
    } else if ('unsure' in answer) {
      if (q.unsureAllowed) answers[id] = { unsure: true }
      else faults.push({ pointer: `${at}/unsure`, code: 'ERR_NOT_UNSURE' })
    } else {
      const parsed = parseValue(q, answer.value)
      if (parsed.ok) answers[id] = { value: parsed.value }
      else for (const f of parsed.error) faults.push({ ...f, pointer: `${at}${f.pointer}` })
    }
  }
  if (faults.length > 0) throw invalid(faults)
  return answers
}
