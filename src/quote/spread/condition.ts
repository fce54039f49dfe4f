import type { SpreadInput } from './spread-input'

/** The same input once an unknown is answered with one of its options (indices as in the cases). */
export const condition = (input: SpreadInput, unknown: number, option: number): SpreadInput => {
  if (input.unknowns[unknown]?.weights[option] === undefined) {
    throw new RangeError('no such unknown or option')
  }
  return {
    ...input,
    unknowns: input.unknowns.map((u, k) =>
      k === unknown
        ? { ...u, weights: u.weights.map((_, o) => (o === option ? 1 : 0)), carSd: 0 }
        : u,
    ),
  }
}
