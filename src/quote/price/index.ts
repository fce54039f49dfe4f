/** Public face of the price: from a distribution to whole amounts that sum. */
export {
  bayDayCharge,
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
  shareLines,
} from './lines'
export {
  grossRange,
  offerNet,
  optionDifferences,
  outwardRange,
} from './offer'
