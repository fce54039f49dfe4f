/** Public face of the spread: minutes and money as distributions. */

export { moments } from './moments'
export { narrowing } from './narrowing'
export { pertMean, pertVariance } from './pert'
export { type Spread, spread } from './spread'
export type { Case, SpreadInput, SpreadItem, ThreePoint, Unknown } from './spread-input'
export { sumsOf } from './sums'
