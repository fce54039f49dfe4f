import type { Docket } from './fold'

export type Price = { readonly net: number; readonly tax: number; readonly total: number }

/** The agreed price of the work: the offer's, or less since the customer said yes to a smaller result. */
export const agreedPrice = (offer: Price, reIssues: Docket['reIssues']): Price => {
  const said = reIssues.findLast((r) => r.decision?.decision === 'go-on' && r.price)
  const { net, tax, total } = said?.price ?? offer
  return { net, tax, total }
}
