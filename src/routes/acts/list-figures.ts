import type { Answers } from '../../intake/answers'
import { replay } from '../../intake/replay'
import { script } from '../../intake/script'
import { type Estimated, estimate } from '../../quote/estimate'
import type { Call, Load } from '../route'
import type { Desk, HeadChange } from './desk'
import { deskInput } from './estimating'

/** Range and riskiest fact for the list after an answer changed; a quote's own range stays as sent. */
export const listFigures = (
  call: Pick<Call<unknown, unknown, Load>, 'studio' | 'now'>,
  desk: Desk,
  answers: Answers,
): HeadChange => {
  const { state } = desk.docket
  if (state !== 'received' && state !== 'look-over') return {}
  const now = { ...desk, answers, replayed: replay(script, answers) }
  if (now.replayed.needed.length > 0) return {}
  const adjustments = desk.docket.revisions.at(-1)?.adjustments ?? []
  const made = estimate(deskInput(call.studio, call.now, now, adjustments))
  return figuresOf(made)
}

/** What the list shows of an estimate. */
export const figuresOf = (made: Estimated): HeadChange => ({
  riskiest: made.riskNotes[0]?.id ?? null,
  priceLow: made.offer.low,
  priceLikely: made.offer.likely,
  priceHigh: made.offer.high,
  currency: made.currency,
})
