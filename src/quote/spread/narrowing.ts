import { momentsFrom } from './moments'
import { carVariance, type SpreadInput } from './spread-input'
import { sumsOf } from './sums'

export type Narrowing = { readonly unknown: string; readonly share: number }

/**
 * How much of the variance each unknown answer would take away in expectation, largest first (ties in
 * the given order): Var − Σ weight · Var(given the option), over Var; what it adds to the car factor counts.
 * Of the price before the minimum, or of the labour.
 */
export const narrowing = (
  input: SpreadInput,
  of: 'price' | 'labour' = 'price',
  sums = sumsOf(input),
): readonly Narrowing[] => {
  const { variance } = momentsFrom(sums, input)[of]
  const minutes = of === 'labour'
  const scaledMean = minutes ? sums.minutes : sums.worth
  const scaledSquare = scaledMean * scaledMean + (minutes ? sums.varMinutes : sums.varWorth)
  const logVariance = carVariance(input)
  const square = Math.exp(logVariance)
  const shares = input.unknowns.map(({ id, weights, carSd }, k) => {
    const given = sums.given[k]!
    // Part that lies between the options, by the law of total variance…
    let between = 0
    const mean = minutes ? sums.minutes : sums.worth + sums.money
    weights.forEach((weight, o) => {
      const at = minutes ? given.minutes[o]! : given.worth[o]! + given.money[o]!
      between += weight * (at - mean) * (at - mean)
    })
    // …and what the car factor loses on all that remains.
    const calmer = square - Math.exp(logVariance - carSd * carSd)
    return { unknown: id, share: variance > 0 ? (between + calmer * scaledSquare) / variance : 0 }
  })
  return shares.sort((a, b) => b.share - a.share)
}
