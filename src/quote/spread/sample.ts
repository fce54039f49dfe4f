import { isLeaf, type LeafTree, type Shape } from './leaf-tree'
import { fillPertTable, pertSlope, STRATA } from './pert-table'
import type { SpreadInput, SpreadItem, ThreePoint, Unknown } from './spread-input'
import { orderOf } from './strata'

/** Sums over all items at each point, before the car factor: minutes per hourly rate, and money. */
export type Sample = {
  readonly minutesByRate: ReadonlyMap<number, Float64Array>
  readonly money: Float64Array
}

/** The option of an unknown at every point, as its bit, each as often as its weight asks. */
const optionDraws = (unknown: Unknown, points: number, dimension: number): Uint16Array => {
  const order = orderOf(points, dimension)
  const out = new Uint16Array(points)
  let p = 0
  let sum = 0
  unknown.weights.forEach((weight, option) => {
    sum += weight
    const end = option === unknown.weights.length - 1 ? points : Math.round(sum * points)
    for (; p < end; p++) out[order[p]!] = 1 << option
  })
  return out
}

/** The case of a shape at each point, and how many points each case has. */
type Cases = { readonly at: Uint16Array; readonly counts: Float64Array }

const casesAt = (shape: Shape, options: readonly Uint16Array[], points: number): Cases => {
  const at = new Uint16Array(points)
  const counts = new Float64Array(shape.weights.length)
  for (let j = 0; j < points; j++) {
    let tree: LeafTree = shape.tree
    while (!isLeaf(tree)) tree = options[tree.unknown]![j]! & tree.options ? tree.yes : tree.no
    at[j] = tree.leaf
    counts[tree.leaf]! += 1
  }
  return { at, counts }
}

/** Quantile table of the item at hand; the room is used again for the next. */
const table = new Float64Array(STRATA)

/** Adds an item no unknown touches: as many points as its chance asks, evenly through the table. */
const addPlain = (chance: number, order: Uint16Array, t: ThreePoint, out: Float64Array) => {
  fillPertTable(t, table)
  const count = Math.round(chance * order.length)
  const step = STRATA / count
  let place = step / 2
  for (let p = 0; p < count; p++) {
    out[order[p]!]! += table[place | 0]!
    place += step
  }
}

/** Adds an item with leaves: evenly through the quantiles of each case over the points of that case. */
const addBranched = (
  item: SpreadItem,
  of: 'minutes' | 'money',
  { at, counts }: Cases,
  order: Uint16Array,
  out: Float64Array,
) => {
  const steps = counts.map((count, k) => STRATA / Math.round(item.cases[k]!.chance * count))
  // No point for this case: its step is infinite and its place beyond the table.
  const places = steps.map((step) => step / 2)
  const slopes = item.cases.map((c) => pertSlope(c[of]))
  for (let p = 0; p < order.length; p++) {
    const j = order[p]!
    const k = at[j]!
    const place = places[k]!
    if (place >= STRATA) continue
    places[k] = place + steps[k]!
    const { base, lower, upper, low, high } = slopes[k]!
    const i = place | 0
    out[j]! += base + lower * low[i]! + upper * high[i]!
  }
}

/** A fixed Latin hypercube over unknowns, chances and steps. Dimension 0 is left to the car factor. */
export const sampleOf = (input: SpreadInput, shapes: readonly Shape[], points: number): Sample => {
  const { items, unknowns } = input
  const options = unknowns.map((u, k) => optionDraws(u, points, 1 + k))
  const money = new Float64Array(points).fill(input.fixedMoney)
  const minutesByRate = new Map<number, Float64Array>()
  const known = new Map<Shape, Cases>()
  items.forEach((item, i) => {
    let minutes = minutesByRate.get(item.ratePerHour)
    if (minutes === undefined) {
      minutes = new Float64Array(points)
      minutesByRate.set(item.ratePerHour, minutes)
    }
    const order = orderOf(points, 1 + unknowns.length + i)
    const withMoney = item.cases.some((c) => c.money.pessimistic > 0)
    const shape = shapes[i]!
    if (shape.axes.length === 0) {
      const { chance, ...each } = item.cases[0]!
      addPlain(chance, order, each.minutes, minutes)
      if (withMoney) addPlain(chance, order, each.money, money)
      return
    }
    let cases = known.get(shape)
    if (cases === undefined) {
      cases = casesAt(shape, options, points)
      known.set(shape, cases)
    }
    addBranched(item, 'minutes', cases, order, minutes)
    if (withMoney) addBranched(item, 'money', cases, order, money)
  })
  return { minutesByRate, money }
}
