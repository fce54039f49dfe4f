import {
  asked,
  belowOf,
  eachBranch,
  isLeaf,
  type LeafTree,
  NONE,
  type Open,
  type Shape,
} from './leaf-tree'

/** Mean of a value per case below each node of the tree, by the number of the node. */
export const meansOf = (shape: Shape, values: Float64Array, open: Open): Float64Array => {
  const out = new Float64Array(shape.nodes)
  const go = (tree: LeafTree): number => {
    let mean = 0
    if (isLeaf(tree)) mean = values[tree.leaf]!
    else
      eachBranch(tree, open, (branch, share) => {
        mean += share * go(branch)
      })
    out[tree.id] = mean
    return mean
  }
  go(shape.tree)
  return out
}

/** The mean once an unknown takes one option, from the means below each node. */
export const meanGiven = (
  tree: LeafTree,
  means: Float64Array,
  unknown: number,
  option: number,
  open: Open,
): number => {
  const { low, high } = asked(unknown)
  const was = open.options[unknown]!
  open.options[unknown] = 1 << option
  const go = (node: LeafTree): number => {
    if (isLeaf(node)) return means[node.id]!
    if ((node.below.low & low) === 0 && (node.below.high & high) === 0) return means[node.id]!
    let sum = 0
    eachBranch(node, open, (branch, share) => {
      sum += share * go(branch)
    })
    return sum
  }
  const mean = go(tree)
  open.options[unknown] = was
  return mean
}

/**
 * Visits nodes of two trees that between them stand for every two cases that can hold together, with
 * how likely they do. Neither divides further what the other does not ask: there the mean below the
 * node says all.
 */
export const eachPair = (
  a: LeafTree,
  b: LeafTree,
  open: Open,
  visit: (nodeA: number, nodeB: number, weight: number) => void,
): void => {
  const { options: left, chances } = open
  const inB = belowOf(b)
  let other = a
  // `low` and `high` are what the first tree has divided on the way to `x`; `second` once it is there.
  const go = (tree: LeafTree, weight: number, low: number, high: number, second: boolean): void => {
    const fork = isLeaf(tree) ? null : tree
    const more =
      fork !== null &&
      (second
        ? (fork.below.low & low) !== 0 || (fork.below.high & high) !== 0
        : (fork.below.low & inB.low) !== 0 || (fork.below.high & inB.high) !== 0)
    if (fork === null || !more) {
      if (second) visit(other.id, tree.id, weight)
      else {
        other = tree
        go(b, weight, low, high, true)
      }
      return
    }
    const { unknown } = fork
    const mine = second ? NONE : asked(unknown)
    const was = left[unknown]!
    const inside = was & fork.options
    const outside = was & ~fork.options
    const chance = chances[unknown]!
    const share = inside !== 0 && outside !== 0 ? weight / chance[was]! : weight
    if (inside !== 0 && chance[inside]! > 0) {
      left[unknown] = inside
      const part = outside === 0 ? weight : share * chance[inside]!
      go(fork.yes, part, low | mine.low, high | mine.high, second)
    }
    if (outside !== 0 && chance[outside]! > 0) {
      left[unknown] = outside
      const part = inside === 0 ? weight : share * chance[outside]!
      go(fork.no, part, low | mine.low, high | mine.high, second)
    }
    left[unknown] = was
  }
  go(a, 1, 0, 0, false)
}
