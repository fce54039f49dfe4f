import { isUnsure } from '../../intake/answers'
import { erasePersonalData, type LineRewrite } from '../../store/erasing'
import { Problem } from '../http/problem'
import type { Call, Load, Outcome } from '../route'
import { type Desk, write } from './desk'

/** Everything a customer gave: answers, contact, texts and pictures, as data. */
export const myData = (desk: Desk) => ({
  id: desk.id,
  reference: desk.docket.reference,
  state: desk.docket.state,
  openedAt: new Date(desk.docket.openedAt).toISOString(),
  contact: desk.people.map(({ name, email, phone, vin, plate }) => ({
    name,
    email,
    phone,
    vin,
    plate,
  })),
  answers: Object.entries(desk.docket.answers).map(([question]) => {
    const answer = desk.answers[question]
    return {
      question,
      ...(answer === undefined || isUnsure(answer) ? { unsure: true } : { value: answer.value }),
    }
  }),
  texts: [...desk.texts.values()],
  photos: desk.photos.map((p) => ({ photo: p.id, subject: p.subject, bytes: p.bytes })),
})

const CLOSES = new Set(['answering', 'received', 'look-over', 'quoted'])

/** While the car is with us its owner must be reachable; the contact stays until it is handed over. */
const IN_HAND = new Set(['dated', 'on-bench', 'held', 'finished', 'part-done', 'uncollected'])

const BLANK = '–'
const blankWhy = (all: unknown): unknown =>
  (all as readonly object[]).map((each) => ({ ...each, why: BLANK }))

/** Lines whose body holds words of somebody's own, with these taken out. */
const rewritesOf = (desk: Desk): readonly LineRewrite[] =>
  desk.lines.flatMap(({ id, kind, body }): readonly LineRewrite[] => {
    const b = body as Readonly<Record<string, unknown>>
    if (kind === 'struck' || kind === 'unreadable') return [{ id, body: { ...b, why: BLANK } }]
    if (kind === 'handed-over')
      return [{ id, body: { ...b, open: (b.open as readonly string[]).map(() => BLANK) } }]
    if (kind !== 'revised') return []
    const reasons = { adjustments: blankWhy(b.adjustments), dropped: blankWhy(b.dropped) }
    return [{ id, body: { ...b, ...reasons } }]
  })

/**
 * Deletes what tells who somebody is: contact, own words, pictures and keys. The figures stay for
 * the books; an enquiry still open is withdrawn with it.
 */
export const eraseMine = (
  call: Call<unknown, unknown, Load>,
  desk: Desk,
): Pick<Outcome, 'writes' | 'after' | 'scrub'> => {
  if (IN_HAND.has(desk.docket.state))
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.in-hand' },
      more: { state: desk.docket.state },
    })
  const closing = CLOSES.has(desk.docket.state)
    ? write(call, desk, [{ kind: 'moved', body: { to: 'withdrawn' } }]).writes
    : []
  const { photos } = call.deps
  return {
    writes: [...closing, ...erasePersonalData(desk.id, call.now, { rewrites: rewritesOf(desk) })],
    scrub: true,
    // By folder, not by row: a picture whose row never came is a picture all the same.
    after: async () => {
      for (const key of await photos.list(`${desk.id}/`)) await photos.delete(key)
    },
  }
}
