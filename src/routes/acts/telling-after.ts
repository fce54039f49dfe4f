import { addDaysText } from '../../quote/working-day'
import { enqueue } from '../../store/outbox'
import { insertText } from '../../store/texts'
import { invalid } from '../http/problem'
import type { Call, Form, Load, Studio } from '../route'
import { type Desk, keepText, write } from './desk'
import { todayOf } from './estimating'
import { addPhoto } from './photo'
import { notNow } from './revising'

type Any = Call<unknown, unknown, Load>

/** Days after the hand-over on which somebody looks again; common practice, no source. */
export const LOOK_AGAIN = [3, 14] as const

/** The days to look again, and which of them was answered. */
export const looksAgain = (studio: Studio, desk: Desk) => {
  const { handedOver, toldAfter } = desk.docket
  if (!handedOver) return []
  const day = todayOf(studio, handedOver.at)
  return LOOK_AGAIN.map((after) => ({
    after,
    date: addDaysText(day, after),
    told: toldAfter.some((t) => t.day === after),
  }))
}

/** Which of the looks a word belongs to: the latest that is due; before the first, none. */
const lookOf = (studio: Studio, desk: Desk, now: number): 0 | 3 | 14 => {
  const today = todayOf(studio, now)
  return looksAgain(studio, desk).findLast((l) => l.date <= today)?.after ?? 0
}

export type ToldGiven = { readonly well: boolean; readonly text?: string | undefined }

/**
 * The owner's word after the hand-over, with a picture where there is one. What is wrong is the
 * studio's turn. Throws 409 before the hand-over, 422 where something is wrong and not said what.
 */
export const tellAfter = async (call: Any, desk: Desk, given: ToldGiven, form?: Form) => {
  if (desk.docket.state !== 'handed-over' || !desk.docket.handedOver) throw notNow(desk.docket, [])
  const typed = given.text?.trim()
  if (!given.well && !typed) throw invalid([{ pointer: '/text', code: 'ERR_REQUIRED' }])
  const picture = form && (form.file('camera') ?? form.file('file'))
  const photo = picture ? await addPhoto(call, desk, form) : null
  const now: Desk = photo ? { ...desk, lines: [...desk.lines, ...photo.placed] } : desk
  const kept = typed ? keepText(call, desk.id, 'told-after', typed) : null
  const { writes, docket } = write(call, now, [
    {
      kind: 'told-after',
      body: {
        day: lookOf(call.studio, desk, call.now),
        well: given.well,
        ...(kept ? { text: kept.ref } : {}),
      },
    },
  ])
  const message = enqueue({
    id: call.newId(),
    kind: given.well ? 'after.well' : 'after.wrong',
    docket: desk.id,
    payload: { docket: desk.id, reference: desk.docket.reference },
    dedupe: `told-after:${desk.id}:${docket.rev}`,
    nextAt: call.now,
  })
  return {
    docket,
    writes: [...(photo?.writes ?? []), ...writes, ...(kept ? [insertText(kept.row)] : []), message],
    ...(photo ? { before: photo.before, undo: photo.undo } : {}),
  }
}
