import type { Doubt } from '../../docket/kinds'
import { isOpenToAnswers } from '../../docket/states'
import type { Answer } from '../../intake/answers'
import { parseValue } from '../../intake/parse'
import type { Contact, Question } from '../../intake/question'
import { script } from '../../intake/script'
import { insertAccess } from '../../store/accesses'
import type { Stmt } from '../../store/db'
import { upsertPerson } from '../../store/people'
import { insertText } from '../../store/texts'
import { newKey, sha256 } from '../http/keys'
import { invalid, Problem } from '../http/problem'
import type { Call, Load } from '../route'
import { appendLines, type Desk, type HeadChange, keepText, openDesk, stamp, write } from './desk'
import { listFigures } from './list-figures'
import { openAgain } from './open-again'
import { carTitle } from './title'

type Any = Call<unknown, unknown, Load>

/** A customer's key opens its docket for this long after it was handed out. */
export const CUSTOMER_KEY_MS = 180 * 86_400_000

/** Begins an enquiry: a docket with its first line and the key that opens it. */
export const openEnquiry = async (
  call: Any,
  language: string,
  from: 'customer' | 'studio',
  like?: string,
) => {
  const id = call.newId()
  const key = newKey(call.deps.random)
  const body = { from, script: script.version, language, ...(like ? { like } : {}) }
  const lines = stamp(call, [{ kind: 'opened', body }])
  const { writes } = appendLines(id, [], undefined, lines, { title: '' })
  const access = insertAccess({
    hash: await sha256(key),
    kind: 'customer',
    docket: id,
    label: from,
    createdAt: call.now,
    expiresAt: call.now + CUSTOMER_KEY_MS,
    usedAt: null,
    revokedAt: null,
    parent: null,
  })
  const desk = openDesk({
    lines: lines.map((l, i) => ({ ...l, docket: id, seq: i + 1 })),
    head: [],
    people: [],
    texts: [],
    photos: [],
  })
  return { id, key, desk, sent: null, writes: [...writes, access] }
}

/**
 * Throws 409 unless answers may still change, saying what may be done instead. Once sent, only what
 * the studio asked again may, and what that answer makes needed.
 */
const openToAnswers = (desk: Desk, question?: string): void => {
  const again = question !== undefined && openAgain(desk).includes(question)
  if (!isOpenToAnswers(desk.docket.state) && !again)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.sent' },
      more: { state: desk.docket.state },
    })
}

/** The question by id. Throws 404 for one the script does not have. */
export const questionOf = (id: string): Question<unknown> => {
  const q = script.questions.find((each) => each.id === id)
  if (!q) throw new Problem('unknown')
  return q
}

/** A question may be answered while it is asked, or to change an answer that stands. */
export const askedNow = (desk: Desk, q: Question<unknown>): void => {
  const asked =
    desk.docket.askedAgain.some((a) => a.question === q.id) ||
    desk.replayed.missing.includes(q.id) ||
    desk.replayed.answered.some((a) => a.question.id === q.id) ||
    q.stage === 'send'
  if (!asked)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.question' },
      more: { question: desk.replayed.current?.id ?? null },
    })
}

export type Given = { readonly value?: unknown; readonly unsure?: true | undefined }

/** The answer as it is kept. Throws 422 with every fault. */
export const accept = (q: Question<unknown>, given: Given): Answer => {
  const both = given.value !== undefined && given.unsure !== undefined
  if (both || (given.value === undefined && given.unsure === undefined))
    throw invalid([
      { pointer: both ? '/unsure' : '/value', code: both ? 'ERR_ONE_OF' : 'ERR_MISSING' },
    ])
  if (given.unsure) {
    if (!q.unsureAllowed) throw invalid([{ pointer: '/unsure', code: 'ERR_NOT_UNSURE' }])
    return { unsure: true }
  }
  const parsed = parseValue(q, given.value)
  if (!parsed.ok) throw invalid(parsed.error)
  return { value: parsed.value }
}

export const yearFault = (q: Question<unknown>, answer: Answer, nowYear: number): void => {
  const late =
    q.kind === 'year' &&
    'value' in answer &&
    typeof answer.value === 'number' &&
    answer.value > nowYear + 1
  if (late) throw invalid([{ pointer: '/value', code: 'ERR_FUTURE' }])
}

/** Where the parts of an answer stand: personal ones and free text apart, the rest in the line. */
export const place = (call: Any, desk: Desk, q: Question<unknown>, answer: Answer) => {
  const personId = desk.people[0]?.id ?? call.newId()
  const was = desk.people[0]
  const blank = { name: null, email: null, phone: null, vin: null, plate: null }
  if ('value' in answer && answer.value !== null && q.kind === 'contact') {
    const c = answer.value as Contact
    const row = { ...blank, ...was, id: personId, docket: desk.id }
    const person = { ...row, name: c.name, email: c.email ?? null, phone: c.phone ?? null }
    return { held: { person: personId }, stmts: [upsertPerson(person)], person: personId }
  }
  if ('value' in answer && answer.value !== null && q.kind === 'vin') {
    const row = { ...blank, ...was, id: personId, docket: desk.id, vin: String(answer.value) }
    return { held: { person: personId }, stmts: [upsertPerson(row)], person: personId }
  }
  if ('value' in answer && answer.value !== null && q.kind === 'text') {
    const { ref, row } = keepText(call, desk.id, `answer.${q.id}`, String(answer.value))
    return { held: ref, stmts: [insertText(row)], person: null }
  }
  return { held: answer as { value: never } | { unsure: true }, stmts: [] as Stmt[], person: null }
}

/** Puts or changes one answer. Throws 404, 409 or 422; nothing given before is lost. */
export const answerQuestion = (
  call: Any,
  desk: Desk,
  q: Question<unknown>,
  given: Given,
  nowYear: number,
  doubts: readonly Doubt[] = [],
) => {
  openToAnswers(desk, q.id)
  askedNow(desk, q)
  const answer = accept(q, given)
  yearFault(q, answer, nowYear)
  const { held, stmts, person } = place(call, desk, q, answer)
  const answers = { ...desk.answers, [q.id]: answer }
  const change: HeadChange = {
    title: carTitle(answers, call.studio.words),
    ...(person === null ? {} : { person }),
    ...(q.id === 'deadline' && 'value' in answer
      ? { wantedBy: answer.value as string | null }
      : {}),
  }
  const { writes, docket } = write(
    call,
    desk,
    [
      { kind: 'answered', body: { question: q.id, answer: held } },
      ...(doubts.length > 0 ? [{ kind: 'doubted' as const, body: { because: [...doubts] } }] : []),
    ],
    { ...change, ...listFigures(call, desk, answers) },
  )
  return { answer, answers, docket, writes: [...writes, ...stmts] }
}

/** Takes an answer back; the question is asked again. */
export const unanswerQuestion = (call: Any, desk: Desk, q: Question<unknown>) => {
  openToAnswers(desk)
  if (desk.docket.answers[q.id] === undefined) throw new Problem('unknown')
  const { [q.id]: _gone, ...answers } = desk.answers
  const { writes, docket } = write(call, desk, [{ kind: 'unanswered', body: { question: q.id } }], {
    title: carTitle(answers, call.studio.words),
  })
  return { answers, docket, writes }
}
