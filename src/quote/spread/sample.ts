import type { LeafGrid } from './leaf-grid'
import { fillPertTable, STRATA } from './pert-table'
import type { SpreadInput, SpreadItem, Unknown } from './spread-input'
import { orderOf } from './strata'

/** Sums over all items at each point, before the car factor: minutes per hourly rate, and money. */
export type Sample = {
  readonly minutesByRate: ReadonlyMap<number, Float64Array>
  readonly money: Float64Array
}

/** The option of an unknown at every point, each as often as its weight asks. */
const optionDraws = (unknown: Unknown, points: number, dimension: number): Uint8Array => {
  const order = orderOf(points, dimension)
  const out = new Uint8Array(points)
  let p = 0
  let sum = 0
  unknown.weights.forEach((weight, option) => {
    sum += weight
    const end = option === unknown.weights.length - 1 ? points : Math.round(sum * points)
    for (; p < end; p++) out[order[p]!] = option
  })
  return out
}

/** The option combination of some unknowns at each point, and how many points each combination has. */
type Cells = { readonly at: Uint16Array; readonly sizes: Float64Array }

const cellsAt = (
  { axes, caseOf }: LeafGrid,
  unknowns: readonly Unknown[],
  options: readonly Uint8Array[],
  points: number,
): Cells => {
  const at = new Uint16Array(points)
  for (const axis of axes) {
    const size = unknowns[axis]!.weights.length
    const option = options[axis]!
    for (let j = 0; j < points; j++) at[j] = at[j]! * size + option[j]!
  }
  const sizes = new Float64Array(caseOf.length)
  for (let j = 0; j < points; j++) sizes[at[j]!]! += 1
  return { at, sizes }
}

/** Quantile tables of the cases of one item, one behind the other; the room is used again for the next. */
let minutesTables = new Float64Array(STRATA)
let moneyTables = new Float64Array(STRATA)

const fillTables = (item: SpreadItem, withMoney: boolean): void => {
  const room = item.cases.length * STRATA
  if (minutesTables.length < room) {
    minutesTables = new Float64Array(room)
    moneyTables = new Float64Array(room)
  }
  item.cases.forEach((c, k) => {
    fillPertTable(c.minutes, minutesTables, k * STRATA)
    if (withMoney) fillPertTable(c.money, moneyTables, k * STRATA)
  })
}

/** Adds an item no unknown touches: as many points as its chance asks, evenly through the table. */
const addPlain = (chance: number, order: Uint16Array, table: Float64Array, out: Float64Array) => {
  const count = Math.round(chance * order.length)
  const step = STRATA / count
  let place = step / 2
  for (let p = 0; p < count; p++) {
    out[order[p]!]! += table[place | 0]!
    place += step
  }
}

/** Adds an item with leaves: evenly through the table of each case over the points of that case. */
const addBranched = (
  item: SpreadItem,
  caseOf: Uint16Array,
  { at, sizes }: Cells,
  order: Uint16Array,
  table: Float64Array,
  out: Float64Array,
) => {
  const counts = new Float64Array(item.cases.length)
  for (let cell = 0; cell < sizes.length; cell++) counts[caseOf[cell]!]! += sizes[cell]!
  const steps = counts.map((count, k) => STRATA / Math.round(item.cases[k]!.chance * count))
  // No point for this case: its step is infinite and its place beyond the table.
  const places = steps.map((step) => step / 2)
  for (let p = 0; p < order.length; p++) {
    const j = order[p]!
    const k = caseOf[at[j]!]!
    const place = places[k]!
    if (place >= STRATA) continue
    places[k] = place + steps[k]!
    out[j]! += table[k * STRATA + (place | 0)]!
  }
}

/** A fixed Latin hypercube over unknowns, chances and steps. Dimension 0 is left to the car factor. */
export const sampleOf = (
  input: SpreadInput,
  grids: readonly LeafGrid[],
  points: number,
): Sample => {
  const { items, unknowns } = input
  const options = unknowns.map((u, k) => optionDraws(u, points, 1 + k))
  const money = new Float64Array(points).fill(input.fixedMoney)
  const minutesByRate = new Map<number, Float64Array>()
  const known = new Map<string, Cells>()
  items.forEach((item, i) => {
    let minutes = minutesByRate.get(item.ratePerHour)
    if (minutes === undefined) {
      minutes = new Float64Array(points)
      minutesByRate.set(item.ratePerHour, minutes)
    }
    const order = orderOf(points, 1 + unknowns.length + i)
    const withMoney = item.cases.some((c) => c.money.pessimistic > 0)
    fillTables(item, withMoney)
    const grid = grids[i]!
    if (grid.axes.length === 0) {
      const { chance } = item.cases[0]!
      addPlain(chance, order, minutesTables, minutes)
      if (withMoney) addPlain(chance, order, moneyTables, money)
      return
    }
    const key = grid.axes.join()
    let cells = known.get(key)
    if (cells === undefined) {
      cells = cellsAt(grid, unknowns, options, points)
      known.set(key, cells)
    }
    addBranched(item, grid.caseOf, cells, order, minutesTables, minutes)
    if (withMoney) addBranched(item, grid.caseOf, cells, order, moneyTables, money)
  })
  return { minutesByRate, money }
}
