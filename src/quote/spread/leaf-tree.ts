import { assertInput } from './assert-input'
import type { Case, SpreadInput, SpreadItem, Unknown } from './spread-input'

/** Which case holds: a fork asks one unknown and has a branch per option, a leaf (unknown −1) is a case. */
export type LeafTree = {
  readonly unknown: number
  readonly leaf: number
  readonly branches: readonly LeafTree[]
}

/** How the cases of an item divide the options; items that divide them alike share one shape. */
export type Shape = {
  /** The unknowns it forks on, ascending. */
  readonly axes: readonly number[]
  readonly tree: LeafTree
  /** Probability of each case. */
  readonly weights: Float64Array
}

/** Option taken by each unknown, −1 while it is open. */
export type Fixed = Int16Array
export const allOpen = (unknowns: readonly Unknown[]): Fixed =>
  new Int16Array(unknowns.length).fill(-1)

const grow = (
  item: SpreadItem,
  open: readonly number[],
  fixed: Fixed,
  unknowns: readonly Unknown[],
): LeafTree => {
  const first = open[0]
  if (first === undefined) throw new RangeError(`cases of ${item.id} leave a gap`)
  const ask = item.cases[first]!.when.find(([unknown]) => fixed[unknown] === -1)
  if (ask === undefined) {
    if (open.length > 1) throw new RangeError(`cases of ${item.id} overlap`)
    return { unknown: -1, leaf: first, branches: [] }
  }
  const [unknown] = ask
  const branches = unknowns[unknown]!.weights.map((_, option) => {
    fixed[unknown] = option
    const here = open.filter((k) =>
      item.cases[k]!.when.every(([u, o]) => u !== unknown || o === option),
    )
    return grow(item, here, fixed, unknowns)
  })
  fixed[unknown] = -1
  return { unknown, leaf: -1, branches }
}

const addWeights = (
  tree: LeafTree,
  weight: number,
  unknowns: readonly Unknown[],
  out: Float64Array,
): void => {
  if (tree.unknown < 0) out[tree.leaf]! += weight
  else
    tree.branches.forEach((branch, option) => {
      addWeights(branch, weight * unknowns[tree.unknown]!.weights[option]!, unknowns, out)
    })
}

const sameWhen = (a: Case['when'], b: Case['when']): boolean =>
  a.length === b.length && a.every(([u, o], i) => b[i]![0] === u && b[i]![1] === o)

const alike = (a: SpreadItem, b: SpreadItem): boolean =>
  a.cases.length === b.cases.length && a.cases.every((c, k) => sameWhen(c.when, b.cases[k]!.when))

const shapeOf = (item: SpreadItem, unknowns: readonly Unknown[]): Shape => {
  const named = new Set(item.cases.flatMap((c) => c.when.map(([unknown]) => unknown)))
  const all = item.cases.map((_, k) => k)
  const tree = grow(item, all, allOpen(unknowns), unknowns)
  const weights = new Float64Array(item.cases.length)
  addWeights(tree, 1, unknowns, weights)
  return { axes: [...named].sort((a, b) => a - b), tree, weights }
}

/**
 * The shape of every item. Throws when an item, a weight or a three-point estimate is ill-formed, and
 * unless exactly one case of an item holds in every combination of options.
 */
export const shapesOf = (input: SpreadInput): readonly Shape[] => {
  assertInput(input)
  const known: { readonly item: SpreadItem; readonly shape: Shape }[] = []
  return input.items.map((item) => {
    const before = known.find((k) => alike(k.item, item))
    if (before !== undefined) return before.shape
    const shape = shapeOf(item, input.unknowns)
    known.push({ item, shape })
    return shape
  })
}

/** Mean of a value per case, given the options that are fixed. */
export const meanOf = (
  tree: LeafTree,
  values: Float64Array,
  fixed: Fixed,
  unknowns: readonly Unknown[],
): number => {
  const { unknown, branches } = tree
  if (unknown < 0) return values[tree.leaf]!
  const option = fixed[unknown]!
  if (option >= 0) return meanOf(branches[option]!, values, fixed, unknowns)
  const { weights } = unknowns[unknown]!
  let sum = 0
  for (let o = 0; o < branches.length; o++)
    if (weights[o]! > 0) sum += weights[o]! * meanOf(branches[o]!, values, fixed, unknowns)
  return sum
}

/** Visits every two cases of two trees that can hold together, with how likely they do. */
export const eachPair = (
  a: LeafTree,
  b: LeafTree,
  fixed: Fixed,
  unknowns: readonly Unknown[],
  visit: (caseA: number, caseB: number, weight: number) => void,
  weight = 1,
): void => {
  const ask = a.unknown >= 0 ? a : b
  const { unknown } = ask
  if (unknown < 0) {
    visit(a.leaf, b.leaf, weight)
    return
  }
  const go = (option: number, share: number): void => {
    const branch = ask.branches[option]!
    if (ask === a) eachPair(branch, b, fixed, unknowns, visit, weight * share)
    else eachPair(a, branch, fixed, unknowns, visit, weight * share)
  }
  const known = fixed[unknown]!
  if (known >= 0) {
    go(known, 1)
    return
  }
  unknowns[unknown]!.weights.forEach((share, option) => {
    if (share === 0) return
    fixed[unknown] = option
    go(option, share)
  })
  fixed[unknown] = -1
}
