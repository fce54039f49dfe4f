import type { Offer, QuoteLine } from '../../docket/kinds'
import type { Estimate } from '../../quote/estimate-types'

/** One of the ways a quote offers, with only what tells it from the others; all words stand ready. */
export type OptionView = {
  readonly option: string
  readonly name: string
  /** The studio's own words about it. */
  readonly said: string | null
  readonly offer: Offer
  readonly days: number
  readonly expects: string
  readonly only: readonly string[]
  readonly leaves: string
  readonly estimate: Estimate
}

/** One sent revision as the customer reads it: the frozen offer with the estimate it rests on. */
export type QuoteView = {
  readonly revision: number
  readonly reference: string
  /** The car in a few words. */
  readonly car: string
  readonly offer: Offer
  readonly estimate: Estimate
  readonly validUntil: string
  readonly sentOn: string
  readonly terms: string
  /** Tax rate in millionths, for the line that states it. */
  readonly taxMillionths: number
  readonly pricesWithTax: boolean
  /** What the studio wrote beside it. */
  readonly message?: string
  /** Lines that state only how they differ; none is chosen beforehand. */
  readonly options?: readonly OptionView[]
  /** What the studio suggests for extras without asking, with tax; 0: it suggests nothing. */
  readonly extrasSuggested: number
  /** Sentences of the computed difference to the revision sent before. */
  readonly changes?: readonly string[]
}

export type { Offer, QuoteLine }
