import type { Answer, Answers } from '../../intake/answers'
import { formValue } from '../../intake/form-value'
import { parseValue } from '../../intake/parse'
import type { Question } from '../../intake/question'
import { script } from '../../intake/script'
import { answerText } from '../../words/answer-text'
import { type Fault, invalid } from '../http/problem'
import type { Call, Load, Studio } from '../route'
import { type Desk, write } from './desk'
import { yearFault } from './enquiry'
import { carTitle } from './title'

type Any = Call<unknown, unknown, Load>

/** Nobody's name, words or pictures come by a link: an address is kept by every machine on its way. */
const KINDS = new Set(['choice', 'multi', 'yesNo', 'number', 'year', 'date', 'money'])
const MOST = 40

/** Parts of an address that are somebody's counting, not answers. */
const COUNTING = /^(utm_|lang$|ref$)|clid$/

const mayPrefill = (q: Question<unknown> | undefined): q is Question<unknown> =>
  q !== undefined && KINDS.has(q.kind) && q.stage !== 'send'

export type Prefilled = {
  readonly question: string
  /** As it stands in the address, to be read the same way again. */
  readonly typed: readonly string[]
  readonly answer: Answer
}

const YES_NO: Readonly<Record<string, string>> = { yes: 'true', no: 'false' }

const readOne = (
  q: Question<unknown>,
  typed: readonly string[],
  studio: Studio,
  year: number,
): Answer | null => {
  const [first = ''] = typed
  const all = typed.flatMap((t) => t.split(',')).filter(Boolean)
  const value = q.kind === 'yesNo' ? (YES_NO[first] ?? first) : first
  const get = (name: string): string | null =>
    name === 'value' ? value : name === 'unsure' && first === 'unsure' ? '1' : null
  const given = formValue(q, { get, getAll: () => all }, studio.engine.exponent)
  if (given === undefined || first === '') return null
  if ('unsure' in given) return given
  const parsed = parseValue(q, given.value)
  if (!parsed.ok) return null
  const answer = { value: parsed.value } as Answer
  try {
    yearFault(q, answer, year)
  } catch {
    return null
  }
  return answer
}

/**
 * Answers that came in an address (`?year=1998&services=paint,cabin`), each held to what its
 * question takes; `wrong` names those that are not used. Nothing is kept before somebody confirms.
 */
export const readPrefill = (
  pairs: Iterable<readonly [string, string]>,
  studio: Studio,
  now: number,
): { readonly right: readonly Prefilled[]; readonly wrong: readonly string[] } => {
  const typed = new Map<string, string[]>()
  for (const [name, value] of pairs) {
    if (COUNTING.test(name)) continue
    if (typed.size >= MOST && !typed.has(name)) break
    typed.set(name, [...(typed.get(name) ?? []), value.slice(0, 200)])
  }
  const year = new Date(now).getUTCFullYear()
  const right: Prefilled[] = []
  const wrong: string[] = []
  for (const [name, values] of typed) {
    const q = script.questions.find((each) => each.id === name)
    const answer = mayPrefill(q) ? readOne(q, values, studio, year) : null
    if (answer === null) wrong.push(name.slice(0, 40))
    else right.push({ question: name, typed: values, answer })
  }
  return { right, wrong }
}

/** What stands beside each for confirming. */
export const prefillTexts = (right: readonly Prefilled[], studio: Studio) =>
  right.flatMap((p) => {
    const q = script.questions.find((each) => each.id === p.question)
    if (!q) return []
    const { words } = studio
    return [{ ...p, prompt: words.say(`q.${q.id}.prompt`), text: answerText(q, p.answer, words) }]
  })

/** Refuses answers that may not come before the conversation. Throws 422. */
export const checkPrefill = (answers: Answers, now: number): void => {
  const faults = Object.keys(answers).flatMap((id): Fault[] => {
    const q = script.questions.find((each) => each.id === id)
    return mayPrefill(q) ? [] : [{ pointer: `/answers/${id}`, code: 'ERR_VALUE' }]
  })
  if (faults.length > 0) throw invalid(faults)
  for (const q of script.questions) {
    const answer = answers[q.id]
    if (answer) yearFault(q, answer, new Date(now).getUTCFullYear())
  }
}

/** The lines of answers that came along, on a docket that was only just opened. */
export const answerAlong = (call: Any, desk: Desk, answers: Answers) => {
  const given = Object.entries(answers)
  if (given.length === 0) return { docket: desk.docket, answers: desk.answers, writes: [] }
  const who = { kind: 'customer', docket: desk.id, access: '' } as const
  const lines = given.map(([question, answer]) => ({
    kind: 'answered' as const,
    body: { question, answer: answer as { value: never } | { unsure: true } },
  }))
  const all: Answers = { ...desk.answers, ...answers }
  const { writes, docket } = write({ ...call, who }, desk, lines, {
    title: carTitle(all, call.studio.words),
  })
  return { docket, answers: all, writes }
}
