import type { Answer, Answers } from '../../intake/answers'
import { isUnsure } from '../../intake/answers'
import { replay } from '../../intake/replay'
import { script } from '../../intake/script'
import type { Stmt } from '../../store/db'
import { type Person, upsertPerson } from '../../store/people'
import { foldPlate } from '../../store/search-words'
import type { Call, Load } from '../route'
import { appendLines, type Desk, openDesk, stamp, type Written } from './desk'
import { openEnquiry, place, questionOf } from './enquiry'
import { submit } from './submit'
import { carTitle } from './title'

/** What time changes: told anew at every visit. */
const OF_ITS_DAY: readonly string[] = [
  'begun-year',
  'contact',
  'vin',
  'deadline',
  'free-dates',
  'budget',
  'photos',
  'mileage',
  'fresh-paint-weeks',
]

/** The answers of an earlier docket that a new one of the same car may start from. */
export const fromLastTime = (answers: Answers): Answers =>
  Object.fromEntries(
    Object.entries(answers).flatMap(([id, a]): [string, Answer][] => {
      if (OF_ITS_DAY.includes(id) || !script.questions.some((q) => q.id === id)) return []
      if (!isUnsure(a) && a.value === null) return []
      if (id !== 'dangers' || isUnsure(a) || !Array.isArray(a.value)) return [[id, a]]
      return [[id, { value: a.value.filter((v) => v !== 'fresh-paint') }]]
    }),
  )

/** What is still needed is said to be unknown, where that may be said; nothing is made up. */
const unknownRest = (answers: Answers): Answers => {
  const all: Record<string, Answer> = { ...answers }
  for (;;) {
    const next = replay(script, all).needed.find((id) => questionOf(id).unsureAllowed)
    if (next === undefined) return all
    all[next] = { unsure: true }
  }
}

export type ShortGiven = {
  readonly answers: Answers
  readonly plate?: string | undefined
  /** The docket of the same car, from an earlier visit. */
  readonly like?: Desk | undefined
  /** They agreed that it is kept; without, it stays open. */
  readonly consent: boolean
}

const same = (a: Answer | undefined, b: Answer): boolean =>
  a !== undefined && JSON.stringify(a) === JSON.stringify(b)

/**
 * Opens a docket for somebody at the counter or on the phone from a few answers. What they did not
 * say is unknown, what came from last time says so. Sent at once when nothing needed is missing.
 */
export const openShort = async (call: Call<unknown, unknown, Load>, given: ShortGiven) => {
  const last = given.like ? fromLastTime(given.like.answers) : {}
  const made = await openEnquiry(call, 'en', 'studio', given.like?.id)
  const was = given.like?.people[0]
  const row: Person = {
    id: call.newId(),
    docket: made.id,
    name: null,
    email: null,
    phone: null,
    vin: was?.vin ?? null,
    plate: foldPlate(given.plate ?? was?.plate ?? '') || null,
  }
  const told = unknownRest({ ...last, ...given.answers })
  const desk = { ...made.desk, people: [row] }
  const written: Written[] = []
  const apart: Stmt[] = []
  let person = row
  for (const [id, answer] of Object.entries(told)) {
    const { held, stmts } = place(call, desk, questionOf(id), answer)
    if (id === 'contact' && 'value' in answer) {
      const c = answer.value as { name: string; email?: string; phone?: string }
      person = { ...row, name: c.name, email: c.email ?? null, phone: c.phone ?? null }
    } else apart.push(...stmts)
    const lastTime = same(last[id], answer) ? { lastTime: true as const } : {}
    written.push({ kind: 'answered', body: { question: id, answer: held, ...lastTime } })
  }
  const wanted = told.deadline && 'value' in told.deadline ? told.deadline.value : null
  const head = {
    title: carTitle(told, call.studio.words),
    person: person.id,
    wantedBy: typeof wanted === 'string' ? wanted : null,
  }
  const lines = stamp(call, written)
  const { writes, placed } = appendLines(made.id, made.desk.lines, undefined, lines, head)
  const base = [...made.writes, ...writes, upsertPerson(person), ...apart]
  const opened = openDesk({
    lines: [...made.desk.lines, ...placed],
    head: [],
    people: [person],
    texts: [],
    photos: [],
  })
  // Free text was put apart a moment ago; the estimate does not read it.
  const now: Desk = { ...opened, answers: { ...opened.answers, ...told } }
  if (now.replayed.needed.length > 0 || !given.consent)
    return { id: made.id, key: made.key, sent: null, desk: now, writes: base }
  const sent = await submit(call, now, [], head)
  return { id: made.id, key: made.key, sent, desk: now, writes: [...base, ...sent.writes] }
}
