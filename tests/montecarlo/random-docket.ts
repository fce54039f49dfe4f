import type { Case, SpreadInput, SpreadItem, ThreePoint, Unknown } from '../../src/quote/spread'
import { randomFrom } from './random'

const nothing: ThreePoint = { optimistic: 0, mode: 0, pessimistic: 0 }

/** A made-up car: 6–45 steps, up to 8 events, up to 6 unsure answers; the seed decides everything. */
export const randomDocket = (seed: number): SpreadInput => {
  const random = randomFrom(seed)
  const between = (low: number, high: number) => low + (high - low) * random()
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1))

  const threePoint = (typical: number, certain: number): ThreePoint => {
    if (random() < certain) return { optimistic: typical, mode: typical, pessimistic: typical }
    const optimistic = typical * between(0.4, 0.95)
    const pessimistic = typical * between(1.05, 3)
    const mode = random() < 0.1 ? (random() < 0.5 ? optimistic : pessimistic) : typical
    return { optimistic, mode, pessimistic }
  }

  const unknowns = Array.from({ length: whole(0, 6) }, (_, k): Unknown => {
    const raw = Array.from({ length: whole(2, 4) }, () => between(0.1, 1))
    const sum = raw.reduce((x, y) => x + y, 0)
    return {
      id: `unknown-${k}`,
      weights: raw.map((w) => w / sum),
      carSd: random() < 0.5 ? 0 : between(0.02, 0.15),
    }
  })

  const leaf = (when: Case['when'], event: boolean, typical: number): Case => {
    const chance = event ? between(0.02, 0.6) : random() < 0.08 ? 0 : 1
    const size = typical * between(0.5, 1.8)
    return {
      when,
      chance,
      minutes: threePoint(size, 0.1),
      money: random() < 0.7 ? nothing : threePoint(between(500, 20_000), 0.5),
    }
  }

  const item = (id: string, event: boolean): SpreadItem => {
    const typical = event ? between(20, 240) : between(5, 120)
    const ratePerHour = random() < 0.8 ? 6000 : 9000
    const named = unknowns.map((_, k) => k).filter(() => random() < 0.12)
    const first = named[0]
    const second = named[1]
    if (first === undefined) return { id, ratePerHour, cases: [leaf([], event, typical)] }
    const cases = unknowns[first]!.weights.flatMap((_, o) => {
      // A second unknown often matters only under one answer of the first.
      if (second === undefined || random() < 0.3) return [leaf([[first, 1 << o]], event, typical)]
      const inner = unknowns[second]!.weights
      return inner.map((_w, q) =>
        leaf(
          [
            [first, 1 << o],
            [second, 1 << q],
          ],
          event,
          typical,
        ),
      )
    })
    return { id, ratePerHour, cases }
  }

  const steps = Array.from({ length: whole(6, 45) }, (_, i) => item(`step-${i}`, false))
  const events = Array.from({ length: whole(0, 8) }, (_, i) => item(`event-${i}`, true))
  return {
    items: [...steps, ...events],
    unknowns,
    carSd: between(0.05, 0.3),
    fixedMoney: Math.round(between(0, 30_000)),
    minimumMoney: random() < 0.3 ? Math.round(between(20_000, 200_000)) : 0,
  }
}
