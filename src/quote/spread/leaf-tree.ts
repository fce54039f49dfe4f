import { assertInput } from './assert-input'
import type { Case, SpreadInput, SpreadItem, Unknown } from './spread-input'

/**
 * Which case holds: a fork asks whether one unknown takes one of some options, a leaf (unknown −1)
 * is a case. Nodes are numbered from 0 within a tree, the root last.
 */
export type LeafTree = Leaf | Fork
type Leaf = { readonly unknown: -1; readonly id: number; readonly leaf: number }
type Fork = {
  readonly unknown: number
  readonly id: number
  /** Bits of the options that go to `yes`. */
  readonly options: number
  readonly yes: LeafTree
  readonly no: LeafTree
  /** The unknowns it and the forks below ask. */
  readonly below: Asked
}

/** Unknowns as bits; past 60 two of them share one, which costs time and nothing else. */
type Asked = { readonly low: number; readonly high: number }
export const NONE: Asked = { low: 0, high: 0 }
const both = (a: Asked, b: Asked): Asked => ({ low: a.low | b.low, high: a.high | b.high })
/** The unknown as a bit. */
export const asked = (unknown: number): Asked => {
  const bit = 1 << (unknown % 30)
  return Math.floor(unknown / 30) % 2 === 0 ? { low: bit, high: 0 } : { low: 0, high: bit }
}
/** The unknowns asked in a tree. */
export const belowOf = (tree: LeafTree): Asked => (isLeaf(tree) ? NONE : tree.below)

/** True for a case, false for a fork. */
export const isLeaf = (tree: LeafTree): tree is Leaf => tree.unknown < 0

/** How the cases of an item divide the options; items that divide them alike share one shape. */
export type Shape = {
  /** The unknowns it forks on, ascending. */
  readonly axes: readonly number[]
  readonly tree: LeafTree
  readonly nodes: number
  /** Probability of each case. */
  readonly weights: Float64Array
}

/** What is still open: the options of each unknown as bits, and how likely every set of them is. */
export type Open = {
  readonly options: Int32Array
  readonly chances: readonly Float64Array[]
}

/** Chance of every set of options, by its bits. */
const chancesOf = ({ weights }: Unknown): Float64Array => {
  const out = new Float64Array(1 << weights.length)
  weights.forEach((weight, o) => {
    const bit = 1 << o
    for (let set = 0; set < bit; set++) out[bit | set] = out[set]! + weight
  })
  return out
}

/** Nothing fixed yet. */
export const allOpen = (unknowns: readonly Unknown[]): Open => ({
  options: Int32Array.from(unknowns, (u) => (1 << u.weights.length) - 1),
  chances: unknowns.map(chancesOf),
})

const grow = (
  item: SpreadItem,
  here: readonly number[],
  open: Int32Array,
  number: () => number,
): LeafTree => {
  const first = here[0]
  if (first === undefined) throw new RangeError(`cases of ${item.id} leave a gap`)
  const ask = item.cases[first]!.when.find(([u, options]) => (open[u]! & ~options) !== 0)
  if (ask === undefined) {
    if (here.length > 1) throw new RangeError(`cases of ${item.id} overlap`)
    return { unknown: -1, id: number(), leaf: first }
  }
  const [unknown, options] = ask
  const was = open[unknown]!
  const branch = (left: number): LeafTree => {
    open[unknown] = left
    return grow(
      item,
      here.filter((k) => item.cases[k]!.when.every(([u, o]) => u !== unknown || (o & left) !== 0)),
      open,
      number,
    )
  }
  const yes = branch(was & options)
  const no = branch(was & ~options)
  open[unknown] = was
  const below = both(asked(unknown), both(belowOf(yes), belowOf(no)))
  return { unknown, id: number(), options, yes, no, below }
}

const addWeights = (tree: LeafTree, weight: number, open: Open, out: Float64Array): void => {
  if (isLeaf(tree)) out[tree.leaf]! += weight
  else
    eachBranch(tree, open, (branch, share) => {
      addWeights(branch, weight * share, open, out)
    })
}

/** Goes down the branches of a fork that can still hold, each with its chance; `open` as narrowed there. */
export const eachBranch = (
  { unknown, options, yes, no }: Fork,
  open: Open,
  go: (branch: LeafTree, share: number) => void,
): void => {
  const was = open.options[unknown]!
  const chances = open.chances[unknown]!
  const all = chances[was]!
  const inside = was & options
  const outside = was & ~options
  if (inside !== 0 && chances[inside]! > 0) {
    open.options[unknown] = inside
    go(yes, outside === 0 ? 1 : chances[inside]! / all)
  }
  if (outside !== 0 && chances[outside]! > 0) {
    open.options[unknown] = outside
    go(no, inside === 0 ? 1 : chances[outside]! / all)
  }
  open.options[unknown] = was
}

const sameWhen = (a: Case['when'], b: Case['when']): boolean =>
  a.length === b.length && a.every(([u, o], i) => b[i]![0] === u && b[i]![1] === o)

const alike = (a: SpreadItem, b: SpreadItem): boolean =>
  a.cases.length === b.cases.length && a.cases.every((c, k) => sameWhen(c.when, b.cases[k]!.when))

const shapeOf = (item: SpreadItem, open: Open): Shape => {
  const named = new Set(item.cases.flatMap((c) => c.when.map(([unknown]) => unknown)))
  let nodes = 0
  const number = (): number => nodes++
  const all = item.cases.map((_, k) => k)
  const tree = grow(item, all, open.options, number)
  const weights = new Float64Array(item.cases.length)
  addWeights(tree, 1, open, weights)
  return { axes: [...named].sort((a, b) => a - b), tree, nodes, weights }
}

/**
 * The shape of every item. Throws when an item, a weight or a three-point estimate is ill-formed, and
 * unless exactly one case of an item holds in every combination of options.
 */
export const shapesOf = (input: SpreadInput): readonly Shape[] => {
  assertInput(input)
  const open = allOpen(input.unknowns)
  const known: { readonly item: SpreadItem; readonly shape: Shape }[] = []
  return input.items.map((item) => {
    const before = known.find((k) => alike(k.item, item))
    if (before !== undefined) return before.shape
    const shape = shapeOf(item, open)
    known.push({ item, shape })
    return shape
  })
}
