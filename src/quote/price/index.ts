/** Public face of the price: from a distribution to whole amounts that sum. */
export {
  bayDayCharge,
  type DepositRule,
  depositOn,
  discountOf,
  subletCharge,
  travelCharge,
  withMinimumCharge,
} from './charges'
export {
  byTimeCap,
  byTimeFinal,
  type DraftLine,
  discountLines,
  linesFor,
  type OfferLine,
} from './lines'
export {
  downToStep,
  grossRange,
  type Offer,
  type OfferRules,
  type OptionDifference,
  type OptionOffer,
  offerFrom,
  optionDifferences,
  outwardRange,
  type Range,
  type SpreadPrice,
  upToStep,
} from './offer'
