import { assertThreePoint } from './pert'
import { type Case, MOST_OPTIONS, type SpreadInput, type Unknown } from './spread-input'

const assertCase = (c: Case, unknowns: readonly Unknown[]): void => {
  assertThreePoint(c.minutes)
  assertThreePoint(c.money)
  if (!(c.chance >= 0 && c.chance <= 1)) throw new RangeError('a chance lies within 0..1')
  for (const [unknown, options] of c.when) {
    const there = unknowns[unknown]?.weights.length ?? 0
    if (!(options > 0 && options < 1 << there)) {
      throw new RangeError('a case names an option that does not exist')
    }
  }
}

const assertUnknowns = (input: SpreadInput): void => {
  for (const { id, weights } of input.unknowns) {
    if (weights.length > MOST_OPTIONS) throw new RangeError(`${id} has too many options`)
    const sum = weights.reduce((a, b) => a + b, 0)
    if (weights.some((w) => !(w >= 0)) || !(Math.abs(sum - 1) < 1e-9)) {
      throw new RangeError(`weights of ${id} must sum to 1`)
    }
  }
}

/** Throws when a weight, a chance or a three-point estimate is ill-formed, or a case names no option. */
export const assertInput = (input: SpreadInput): void => {
  assertUnknowns(input)
  for (const item of input.items) for (const c of item.cases) assertCase(c, input.unknowns)
}
