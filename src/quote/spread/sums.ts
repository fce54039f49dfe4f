import { type LeafGrid, leafGrids } from './leaf-grid'
import { cellWeights, covariance, marginal, weightedMean } from './option-tables'
import { pertMean, pertVariance } from './pert'
import { comonotoneCovariance } from './pert-table'
import type { Case, SpreadInput, SpreadItem, Unknown } from './spread-input'

/** Means over option combinations of the same unknowns: minutes, their worth at the rate, other money. */
type Group = {
  readonly axes: readonly number[]
  readonly minutes: Float64Array
  readonly worth: Float64Array
  readonly money: Float64Array
}

/** Moments of the sums over all items before the car factor; worth and money in minor units. */
export type Sums = {
  readonly minutes: number
  readonly worth: number
  readonly money: number
  readonly varMinutes: number
  readonly varWorth: number
  readonly varMoney: number
  readonly covWorthMoney: number
  /** Per unknown: the means given each of its options. */
  readonly given: readonly {
    readonly minutes: Float64Array
    readonly worth: Float64Array
    readonly money: Float64Array
  }[]
}

/** Own variance of one case, its chance included. */
const caseSpread = (c: Case, rate: number) => {
  const { chance } = c
  const minutes = pertMean(c.minutes)
  const money = pertMean(c.money)
  const open = chance * (1 - chance)
  const varMinutes = chance * pertVariance(c.minutes) + open * minutes * minutes
  const shared = chance * comonotoneCovariance(c.minutes, c.money) + open * minutes * money
  return {
    varMinutes,
    varWorth: varMinutes * rate * rate,
    varMoney: chance * pertVariance(c.money) + open * money * money,
    covWorthMoney: shared * rate,
  }
}

type Own = ReturnType<typeof caseSpread>

const addItem = (
  item: SpreadItem,
  { axes, caseOf }: LeafGrid,
  unknowns: readonly Unknown[],
  groups: Map<string, Group>,
  own: { -readonly [K in keyof Own]: number },
): void => {
  const rate = item.ratePerHour / 60
  const size = caseOf.length
  const key = axes.join()
  let group = groups.get(key)
  if (group === undefined) {
    const empty = () => new Float64Array(size)
    group = { axes, minutes: empty(), worth: empty(), money: empty() }
    groups.set(key, group)
  }
  const spreads = item.cases.map((c) => caseSpread(c, rate))
  const weights = cellWeights(axes, unknowns)
  for (let cell = 0; cell < size; cell++) {
    const c = item.cases[caseOf[cell]!]!
    const s = spreads[caseOf[cell]!]!
    const weight = weights[cell]!
    const minutes = c.chance * pertMean(c.minutes)
    group.minutes[cell]! += minutes
    group.worth[cell]! += minutes * rate
    group.money[cell]! += c.chance * pertMean(c.money)
    own.varMinutes += weight * s.varMinutes
    own.varWorth += weight * s.varWorth
    own.varMoney += weight * s.varMoney
    own.covWorthMoney += weight * s.covWorthMoney
  }
}

/** Adds what two groups share through common unknowns; given the options they are independent. */
const addShared = (
  a: Group,
  b: Group,
  unknowns: readonly Unknown[],
  total: { -readonly [K in keyof Own]: number },
): void => {
  const common = a.axes.filter((axis) => b.axes.includes(axis))
  if (common.length === 0) return
  const weights = cellWeights(common, unknowns)
  const onA = (values: Float64Array) => marginal(a.axes, values, common, unknowns)
  const onB = (values: Float64Array) => marginal(b.axes, values, common, unknowns)
  total.varMinutes += covariance(onA(a.minutes), onB(b.minutes), weights)
  total.varWorth += covariance(onA(a.worth), onB(b.worth), weights)
  total.varMoney += covariance(onA(a.money), onB(b.money), weights)
  total.covWorthMoney += covariance(onA(a.worth), onB(b.money), weights)
}

/** Exact sums of means, variances and covariances, shared unknowns included. Throws on an ill-formed input. */
export const sumsOf = (input: SpreadInput, grids = leafGrids(input)): Sums => {
  const { unknowns } = input
  const groups = new Map<string, Group>()
  const total = { varMinutes: 0, varWorth: 0, varMoney: 0, covWorthMoney: 0 }
  input.items.forEach((item, i) => {
    addItem(item, grids[i]!, unknowns, groups, total)
  })
  const all = [...groups.values()]
  for (const a of all) for (const b of all) addShared(a, b, unknowns, total)
  const means = { minutes: 0, worth: 0, money: 0 }
  const given = unknowns.map(({ weights }) => ({
    minutes: new Float64Array(weights.length),
    worth: new Float64Array(weights.length),
    money: new Float64Array(weights.length),
  }))
  for (const kind of ['minutes', 'worth', 'money'] as const) {
    for (const group of all) {
      const mean = weightedMean(group[kind], cellWeights(group.axes, unknowns))
      means[kind] += mean
      given.forEach((g, k) => {
        const has = group.axes.includes(k)
        const part = has ? marginal(group.axes, group[kind], [k], unknowns) : undefined
        for (let o = 0; o < g[kind].length; o++) g[kind][o]! += part === undefined ? mean : part[o]!
      })
    }
  }
  return { ...means, ...total, given }
}
