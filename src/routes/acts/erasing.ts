import { BLANK, blankOwnWords } from '../../docket/own-words'
import type { Stmt } from '../../store/db'
import { erasePersonalData } from '../../store/erasing'
import { type StoredEstimate, selectEstimatesOf } from '../../store/estimates'
import type { PhotoStore } from '../../store/photos-port'
import { Problem } from '../http/problem'
import type { Call, Load, Outcome } from '../route'
import { type Desk, deskLoad, write } from './desk'

const CLOSES = new Set(['answering', 'received', 'look-over', 'quoted'])

/** While the car is with us its owner must be reachable; the contact stays until it is handed over. */
const IN_HAND = new Set(['dated', 'on-bench', 'held', 'finished', 'part-done', 'uncollected'])

/** What an erasure has to see. */
export const eraseLoad = (docket: string) => ({
  ...deskLoad(docket),
  estimates: selectEstimatesOf(docket),
})

/** A kept estimate without the names of work somebody typed; the same one where there are none. */
const blankNames = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(blankNames)
  if (value === null || typeof value !== 'object') return value
  return Object.fromEntries(
    Object.entries(value).map(([key, v]) => [
      key,
      key === 'name' && typeof v === 'string' ? BLANK : blankNames(v),
    ]),
  )
}

const named = (value: unknown): boolean => JSON.stringify(value).includes('"name":')

/** The statements that take out of a docket what tells whose it is. */
export const erasureOf = (
  desk: Pick<Desk, 'id' | 'lines'>,
  estimates: readonly StoredEstimate[],
  now: number,
): readonly Stmt[] =>
  erasePersonalData(desk.id, now, {
    rewrites: desk.lines.flatMap(({ id, kind, body }) => {
      const blank = blankOwnWords(kind, body)
      return blank === null ? [] : [{ id, body: blank }]
    }),
    estimates: estimates
      .filter((e) => named(e.inputs) || named(e.result))
      .map((e) => ({ ...e, inputs: blankNames(e.inputs), result: blankNames(e.result) })),
  })

/** Deletes the pictures of a docket: by folder, since one whose row never came is one all the same. */
export const erasePictures = async (photos: PhotoStore, docket: string): Promise<void> => {
  for (const key of await photos.list(`${docket}/`)) await photos.delete(key)
}

/**
 * Deletes what tells who somebody is: contact, own words, pictures and keys. The figures stay for
 * the books; an enquiry still open is withdrawn with it. Throws 409 while the car is with us.
 */
export const eraseMine = (
  call: Call<unknown, unknown, Load>,
  desk: Desk,
  estimates: readonly StoredEstimate[],
): Pick<Outcome, 'writes' | 'after' | 'scrub'> => {
  if (IN_HAND.has(desk.docket.state))
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.in-hand' },
      more: { state: desk.docket.state },
    })
  const closing = CLOSES.has(desk.docket.state)
    ? write(call, desk, [{ kind: 'moved', body: { to: 'withdrawn' } }]).writes
    : []
  return {
    writes: [...closing, ...erasureOf(desk, estimates, call.now)],
    scrub: true,
    after: () => erasePictures(call.deps.photos, desk.id),
  }
}
