/** Public face of the spread: minutes and money as distributions. */
export { condition } from './condition'
export { type Moments, moments } from './moments'
export { type Narrowing, narrowing } from './narrowing'
export { classicPert, pertMean, pertShapes, pertVariance } from './pert'
export { type Spread, spread } from './spread'
export type { Case, SpreadInput, SpreadItem, ThreePoint, Unknown } from './spread-input'
export { sumsOf } from './sums'
