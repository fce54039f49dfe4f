import { eachPair, meanGiven, meansOf } from './leaf-means'
import { allOpen, type Open, type Shape, shapesOf } from './leaf-tree'
import { pertMean, pertVariance } from './pert'
import { comonotoneCovariance } from './pert-table'
import type { Case, SpreadInput, SpreadItem } from './spread-input'

const KINDS = ['minutes', 'worth', 'money'] as const

/** Means per case of all items of one shape: minutes, their worth at the rate, other money. */
type Means = Readonly<Record<(typeof KINDS)[number], Float64Array>>
type Group = Means & { readonly shape: Shape }

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
  readonly given: readonly Means[]
  /** The shape of each item. */
  readonly shapes: readonly Shape[]
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

type Own = { -readonly [K in keyof ReturnType<typeof caseSpread>]: number }

const emptyMeans = (size: number): Means => ({
  minutes: new Float64Array(size),
  worth: new Float64Array(size),
  money: new Float64Array(size),
})

const addItem = (item: SpreadItem, shape: Shape, groups: Map<Shape, Group>, own: Own): void => {
  const rate = item.ratePerHour / 60
  let group = groups.get(shape)
  if (group === undefined) {
    group = { shape, ...emptyMeans(item.cases.length) }
    groups.set(shape, group)
  }
  for (const [k, c] of item.cases.entries()) {
    if (c.chance === 0) continue
    const s = caseSpread(c, rate)
    const weight = shape.weights[k]!
    const minutes = c.chance * pertMean(c.minutes)
    group.minutes[k]! += minutes
    group.worth[k]! += minutes * rate
    group.money[k]! += c.chance * pertMean(c.money)
    own.varMinutes += weight * s.varMinutes
    own.varWorth += weight * s.varWorth
    own.varMoney += weight * s.varMoney
    own.covWorthMoney += weight * s.covWorthMoney
  }
}

/** Of all items of one shape: the means below each node of its tree less the mean of the whole. */
type Centred = {
  readonly shape: Shape
  readonly mean: Readonly<Record<(typeof KINDS)[number], number>>
  readonly off: Means
}

const centred = (group: Group, open: Open): Centred => {
  const { shape } = group
  const root = shape.tree.id
  const of = (kind: (typeof KINDS)[number]) => meansOf(shape, group[kind], open)
  const [minutes, worth, money] = [of('minutes'), of('worth'), of('money')]
  const mean = { minutes: minutes[root]!, worth: worth[root]!, money: money[root]! }
  const off = (all: Float64Array, whole: number) => all.map((value) => value - whole)
  return {
    shape,
    mean,
    off: {
      minutes: off(minutes, mean.minutes),
      worth: off(worth, mean.worth),
      money: off(money, mean.money),
    },
  }
}

/** Adds what two groups share through common unknowns; given the options they are independent. */
const addShared = (a: Centred, b: Centred, open: Open, total: Own): void => {
  if (!a.shape.axes.some((axis) => b.shape.axes.includes(axis))) return
  const twice = a === b ? 1 : 2
  const { minutes: minutesA, worth: worthOfA, money: moneyOfA } = a.off
  const { minutes: minutesB, worth: worthOfB, money: moneyOfB } = b.off
  eachPair(a.shape.tree, b.shape.tree, open, (i, j, weight) => {
    const worthA = worthOfA[i]!
    const worthB = worthOfB[j]!
    const moneyA = moneyOfA[i]!
    const moneyB = moneyOfB[j]!
    const both = weight * twice
    total.varMinutes += both * minutesA[i]! * minutesB[j]!
    total.varWorth += both * worthA * worthB
    total.varMoney += both * moneyA * moneyB
    total.covWorthMoney += (both / 2) * (worthA * moneyB + worthB * moneyA)
  })
}

const givenOf = (input: SpreadInput, groups: readonly Centred[], open: Open): readonly Means[] =>
  input.unknowns.map(({ weights }, k) => {
    const given = emptyMeans(weights.length)
    for (const { shape, mean, off } of groups) {
      const forks = shape.axes.includes(k)
      for (let o = 0; o < weights.length; o++)
        for (const kind of KINDS)
          given[kind][o]! += mean[kind] + (forks ? meanGiven(shape.tree, off[kind], k, o, open) : 0)
    }
    return given
  })

/** Exact sums of means, variances and covariances, shared unknowns included. Throws on an ill-formed input. */
export const sumsOf = (input: SpreadInput): Sums => {
  const { unknowns } = input
  const shapes = shapesOf(input)
  const groups = new Map<Shape, Group>()
  const total = { varMinutes: 0, varWorth: 0, varMoney: 0, covWorthMoney: 0 }
  input.items.forEach((item, i) => {
    addItem(item, shapes[i]!, groups, total)
  })
  const open = allOpen(unknowns)
  const all = [...groups.values()].map((group) => centred(group, open))
  all.forEach((a, i) => {
    for (const b of all.slice(i)) addShared(a, b, open, total)
  })
  const sum = (kind: (typeof KINDS)[number]) => all.reduce((s, group) => s + group.mean[kind], 0)
  const means = { minutes: sum('minutes'), worth: sum('worth'), money: sum('money') }
  return { ...means, ...total, given: givenOf(input, all, open), shapes }
}
