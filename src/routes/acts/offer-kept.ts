import type { Offer } from '../../docket/kinds'
import type { Estimated } from '../../quote/estimate'

/** The frozen offer of a revision, as the quote keeps it. */
export const offerOf = (made: Estimated): Offer => ({
  lines: made.offer.lines.map((l) => ({ ...l })),
  net: made.offer.net,
  tax: made.offer.tax,
  total: made.offer.total,
  low: made.offer.low,
  high: made.offer.high,
  chanceEnough: made.offer.chanceEnough,
  deposit: made.offer.deposit,
  currency: made.currency,
})
