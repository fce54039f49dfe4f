import { cellCount, strideOf } from './option-tables'
import { assertThreePoint } from './pert'
import type { Case, SpreadInput, SpreadItem, Unknown } from './spread-input'

/**
 * The leaves of an item over the unknowns it names. axes: those unknowns, ascending; cells run over all
 * option combinations, the last axis fastest; caseOf gives the case of each cell.
 */
export type LeafGrid = {
  readonly axes: readonly number[]
  readonly caseOf: Uint16Array
}

const matches = (
  c: Case,
  cell: number,
  axes: readonly number[],
  unknowns: readonly Unknown[],
): boolean =>
  c.when.every(([unknown, option]) => {
    const size = unknowns[unknown]!.weights.length
    return Math.floor(cell / strideOf(axes, unknown, unknowns)) % size === option
  })

const assertCase = (c: Case, unknowns: readonly Unknown[]): void => {
  assertThreePoint(c.minutes)
  assertThreePoint(c.money)
  if (!(c.chance >= 0 && c.chance <= 1)) throw new RangeError('a chance lies within 0..1')
  for (const [unknown, option] of c.when) {
    if (unknowns[unknown]?.weights[option] === undefined) {
      throw new RangeError('a case names an option that does not exist')
    }
  }
}

const assertUnknowns = (input: SpreadInput): void => {
  for (const { id, weights } of input.unknowns) {
    const sum = weights.reduce((a, b) => a + b, 0)
    if (weights.some((w) => !(w >= 0)) || !(Math.abs(sum - 1) < 1e-9)) {
      throw new RangeError(`weights of ${id} must sum to 1`)
    }
  }
}

/** Lays out an item's cases; throws unless exactly one case holds in every combination. */
export const leafGrid = (item: SpreadItem, unknowns: readonly Unknown[]): LeafGrid => {
  const named = new Set<number>()
  for (const c of item.cases) {
    assertCase(c, unknowns)
    for (const [unknown] of c.when) named.add(unknown)
  }
  const axes = [...named].sort((a, b) => a - b)
  const caseOf = new Uint16Array(cellCount(axes, unknowns))
  for (let cell = 0; cell < caseOf.length; cell++) {
    let found = -1
    for (let k = 0; k < item.cases.length; k++) {
      if (!matches(item.cases[k]!, cell, axes, unknowns)) continue
      if (found >= 0) throw new RangeError(`cases of ${item.id} overlap`)
      found = k
    }
    if (found < 0) throw new RangeError(`cases of ${item.id} leave a gap`)
    caseOf[cell] = found
  }
  return { axes, caseOf }
}

/** The grids of all items. Throws when an item, a weight or a three-point estimate is ill-formed. */
export const leafGrids = (input: SpreadInput): LeafGrid[] => {
  assertUnknowns(input)
  return input.items.map((item) => leafGrid(item, input.unknowns))
}
