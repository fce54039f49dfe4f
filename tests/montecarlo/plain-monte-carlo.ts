import type { SpreadInput, ThreePoint } from '../../src/quote/spread'
import { randomFrom } from './random'

/** Inverse of a modified PERT distribution (λ = 4) at LEVELS equal steps, by summing its density over x. */
const LEVELS = 4096
const FINE = 20_000
const inverseTable = (t: ThreePoint): Float64Array => {
  const out = new Float64Array(LEVELS + 1)
  const range = t.pessimistic - t.optimistic
  if (range === 0) return out.fill(t.mode)
  const a = (4 * (t.mode - t.optimistic)) / range
  const b = 4 - a
  const sums = new Float64Array(FINE + 1)
  for (let i = 0; i < FINE; i++) {
    const x = (i + 0.5) / FINE
    sums[i + 1] = sums[i]! + Math.exp(a * Math.log(x) + b * Math.log(1 - x))
  }
  let i = 0
  for (let level = 0; level <= LEVELS; level++) {
    const target = (level / LEVELS) * sums[FINE]!
    while (i < FINE - 1 && sums[i + 1]! < target) i += 1
    const inside = (target - sums[i]!) / (sums[i + 1]! - sums[i]!)
    out[level] = t.optimistic + (range * (i + inside)) / FINE
  }
  out[0] = t.optimistic
  out[LEVELS] = t.pessimistic
  return out
}

const at = (table: Float64Array, u: number): number => {
  const place = u * LEVELS
  const low = Math.floor(place)
  return table[low]! + (place - low) * (table[low + 1]! - table[low]!)
}

export type Sampled = {
  readonly labour: Float64Array
  readonly price: Float64Array
}

/**
 * Plain Monte Carlo of the same model, drawn one car at a time with independent random numbers:
 * labour and price (after the minimum), each sorted. Shares no code with the spread it checks.
 */
export const plainMonteCarlo = (input: SpreadInput, draws: number, seed: number): Sampled => {
  const random = randomFrom(seed)
  const items = input.items.map((item) => ({
    perMinute: item.ratePerHour / 60,
    cases: item.cases.map((c) => ({
      when: c.when,
      chance: c.chance,
      minutes: inverseTable(c.minutes),
      money: c.money.pessimistic === 0 ? undefined : inverseTable(c.money),
    })),
  }))
  let logVariance = input.carSd * input.carSd
  for (const u of input.unknowns) logVariance += u.carSd * u.carSd
  const sd = Math.sqrt(logVariance)
  const labour = new Float64Array(draws)
  const price = new Float64Array(draws)
  const answers = input.unknowns.map(() => 0)
  for (let n = 0; n < draws; n++) {
    for (let k = 0; k < answers.length; k++) {
      const weights = input.unknowns[k]!.weights
      let left = random()
      let option = 0
      while (option < weights.length - 1 && left > weights[option]!) left -= weights[option++]!
      answers[k] = option
    }
    // Box–Muller
    const z = Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random())
    const factor = Math.exp(sd * z - logVariance / 2)
    let minutes = 0
    let amount = input.fixedMoney
    for (let i = 0; i < items.length; i++) {
      const item = items[i]!
      let c = item.cases[0]!
      for (let q = 0; q < item.cases.length; q++) {
        c = item.cases[q]!
        let holds = true
        for (let w = 0; w < c.when.length; w++) {
          if ((c.when[w]![1] & (1 << answers[c.when[w]![0]]!)) === 0) holds = false
        }
        if (holds) break
      }
      if (c.chance < 1 && random() >= c.chance) continue
      const u = random()
      const own = at(c.minutes, u) * factor
      minutes += own
      amount += own * item.perMinute
      if (c.money !== undefined) amount += at(c.money, u)
    }
    labour[n] = minutes
    price[n] = Math.max(input.minimumMoney, amount)
  }
  return { labour: labour.sort(), price: price.sort() }
}

/** Quantile of a sorted sample. */
export const sampleQuantile = (sorted: Float64Array, p: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(p * sorted.length))]!
