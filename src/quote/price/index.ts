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
  type PricedLine,
  shareLines,
} from './lines'
export {
  downToStep,
  grossRange,
  type OptionDifference,
  type OptionOffer,
  offerNet,
  optionDifferences,
  outwardRange,
  type Range,
  type SpreadPrice,
  upToStep,
} from './offer'
